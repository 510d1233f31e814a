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

class SeacockTagAtStartPanelTest {

    private final CommissioningRecord record = Installation.empty();
    private final RawWaterCircuit rawWaterCircuit = record.getRawWater();

    @BeforeEach
    void applies() {
        record.getVessel().setHullKind(HullKind.SAILING_MONOHULL);
    }

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        rawWaterCircuit.setSeacockTagAtStartPanel(Answer.YES);
        judge(SeacockTagAtStartPanel.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        rawWaterCircuit.setSeacockTagAtStartPanel(Answer.NO);
        judge(SeacockTagAtStartPanel.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeacockTagAtStartPanel.check(), record).cannotTell("rawWater.seacockTagAtStartPanel");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        rawWaterCircuit.setSeacockTagAtStartPanel(Answer.NOT_APPLICABLE);
        judge(SeacockTagAtStartPanel.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToMotorCraft() {
        rawWaterCircuit.setSeacockTagAtStartPanel(Answer.NO);
        record.getVessel().setHullKind(HullKind.MOTOR_PLANING);
        judge(SeacockTagAtStartPanel.check(), record).doesNotApply();
    }
}
