// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustMufflerLevelAfterStopTest {

    // derived: the inlet is the spill level
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustMufflerLevelAfterStop.check(), MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET).at(record -> record.getExhaust().getMuffler())
            .in(ExhaustMufflerLevelAfterStopTest::installation).wants(Answer.YES, "exhaust.muffler.levelAfterStopBelowInlet");
    }

    @Test
    void doesNotApplyWithoutAMuffler() {
        CommissioningRecord record = Installation.empty();
        record.getExhaust().getMuffler().setKind(MufflerKind.NONE);
        judge(ExhaustMufflerLevelAfterStop.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getExhaust().getMuffler().setKind(MufflerKind.STANDPIPE);
    }
}
