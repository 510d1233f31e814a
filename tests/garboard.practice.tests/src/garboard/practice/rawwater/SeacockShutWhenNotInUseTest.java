// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.HullKind;
import garboard.model.RawWaterCircuit;
import garboard.practice.testing.Installation;

class SeacockShutWhenNotInUseTest {

    private final CommissioningRecord record = Installation.empty();
    private final RawWaterCircuit rawWaterCircuit = record.getRawWater();

    @BeforeEach
    void applies() {
        record.getVessel().setHullKind(HullKind.SAILING_MONOHULL);
    }

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        rawWaterCircuit.setShutWhenNotInUse(Answer.YES);
        judge(SeacockShutWhenNotInUse.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        rawWaterCircuit.setShutWhenNotInUse(Answer.NO);
        judge(SeacockShutWhenNotInUse.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeacockShutWhenNotInUse.check(), record).cannotTell("rawWater.shutWhenNotInUse");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        rawWaterCircuit.setShutWhenNotInUse(Answer.NOT_APPLICABLE);
        judge(SeacockShutWhenNotInUse.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToMotorCraft() {
        rawWaterCircuit.setShutWhenNotInUse(Answer.NO);
        record.getVessel().setHullKind(HullKind.MOTOR_PLANING);
        judge(SeacockShutWhenNotInUse.check(), record).doesNotApply();
    }
}
