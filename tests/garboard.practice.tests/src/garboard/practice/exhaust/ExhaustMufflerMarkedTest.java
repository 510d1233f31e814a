// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__MARKED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustMufflerMarkedTest {

    // ABYC P-1 and UL 1129 as quoted
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustMufflerMarked.check(), MUFFLER__MARKED).at(record -> record.getExhaust().getMuffler())
            .in(ExhaustMufflerMarkedTest::installation).wants(Answer.YES, "exhaust.muffler.marked");
    }

    @Test
    void doesNotApplyWithoutAMuffler() {
        CommissioningRecord record = Installation.empty();
        record.getExhaust().getMuffler().setKind(MufflerKind.NONE);
        judge(ExhaustMufflerMarked.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getExhaust().getMuffler().setKind(MufflerKind.LIFT_MUFFLER);
    }
}
