// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.RawWaterCircuit;
import garboard.practice.testing.Installation;

class NoDischargeAheadOfIntakeTest {

    private final CommissioningRecord record = Installation.empty();
    private final RawWaterCircuit rawWaterCircuit = record.getRawWater();

    // common practice
    @Test
    void meetsWhenTheAnswerIsNo() {
        rawWaterCircuit.setDischargeAheadOfIntake(Answer.NO);
        judge(NoDischargeAheadOfIntake.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsYes() {
        rawWaterCircuit.setDischargeAheadOfIntake(Answer.YES);
        judge(NoDischargeAheadOfIntake.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(NoDischargeAheadOfIntake.check(), record).cannotTell("rawWater.dischargeAheadOfIntake");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        rawWaterCircuit.setDischargeAheadOfIntake(Answer.NOT_APPLICABLE);
        judge(NoDischargeAheadOfIntake.check(), record).doesNotApply();
    }
}
