// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__DRAIN_PLUG;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustMufflerDrainPlugTest {

    // common practice
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustMufflerDrainPlug.check(), MUFFLER__DRAIN_PLUG).at(record -> record.getExhaust().getMuffler())
            .in(ExhaustMufflerDrainPlugTest::installation).wants(Answer.YES, "exhaust.muffler.drainPlug");
    }

    @Test
    void doesNotApplyWithoutAMuffler() {
        CommissioningRecord record = Installation.empty();
        record.getExhaust().getMuffler().setKind(MufflerKind.NONE);
        judge(ExhaustMufflerDrainPlug.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getExhaust().getMuffler().setKind(MufflerKind.LIFT_MUFFLER);
    }
}
