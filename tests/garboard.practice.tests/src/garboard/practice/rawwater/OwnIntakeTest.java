// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.RawWaterCircuit;
import garboard.practice.testing.Installation;

class OwnIntakeTest {

    private final CommissioningRecord record = Installation.empty();
    private final RawWaterCircuit rawWaterCircuit = record.getRawWater();

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        rawWaterCircuit.setOwnIntake(Answer.YES);
        judge(OwnIntake.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        rawWaterCircuit.setOwnIntake(Answer.NO);
        judge(OwnIntake.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(OwnIntake.check(), record).cannotTell("rawWater.ownIntake");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        rawWaterCircuit.setOwnIntake(Answer.NOT_APPLICABLE);
        judge(OwnIntake.check(), record).doesNotApply();
    }
}
