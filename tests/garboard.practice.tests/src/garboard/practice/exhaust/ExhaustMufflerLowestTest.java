// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__LOWEST_POINT;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustMufflerLowestTest {

    // common practice
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustMufflerLowest.check(), MUFFLER__LOWEST_POINT).at(record -> record.getExhaust().getMuffler())
            .in(ExhaustMufflerLowestTest::installation).wants(Answer.YES, "exhaust.muffler.lowestPoint");
    }

    @Test
    void doesNotApplyWithoutALiftMuffler() {
        CommissioningRecord record = Installation.empty();
        record.getExhaust().getMuffler().setKind(MufflerKind.IN_LINE);
        judge(ExhaustMufflerLowest.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getExhaust().getMuffler().setKind(MufflerKind.LIFT_MUFFLER);
    }
}
