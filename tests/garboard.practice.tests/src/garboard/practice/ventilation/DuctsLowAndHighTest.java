// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.Ventilation;
import garboard.practice.testing.Installation;

class DuctsLowAndHighTest {

    private final CommissioningRecord record = Installation.empty();
    private final Ventilation ventilation = record.getVentilation();

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        ventilation.setDuctsLowAndHigh(Answer.YES);
        judge(DuctsLowAndHigh.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        ventilation.setDuctsLowAndHigh(Answer.NO);
        judge(DuctsLowAndHigh.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(DuctsLowAndHigh.check(), record).cannotTell("ventilation.ductsLowAndHigh");
    }

    @Test
    void leavesGasolineBoatsToTheirOwnRules() {
        ventilation.setDuctsLowAndHigh(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        judge(DuctsLowAndHigh.check(), record).doesNotApply(); // 33 CFR 183.630: the exhaust begins in the lowest third
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        ventilation.setDuctsLowAndHigh(Answer.NOT_APPLICABLE);
        judge(DuctsLowAndHigh.check(), record).doesNotApply();
    }
}
