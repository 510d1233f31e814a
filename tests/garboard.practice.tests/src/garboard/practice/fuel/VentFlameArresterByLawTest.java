// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelSupply;
import garboard.practice.testing.Installation;

class VentFlameArresterByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    // 33 CFR 183.520
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSupply.setVentFlameArrester(Answer.YES);
        judge(VentFlameArresterByLaw.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSupply.setVentFlameArrester(Answer.NO);
        judge(VentFlameArresterByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(VentFlameArresterByLaw.check(), record).cannotTell("fuelSupply.ventFlameArrester");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        fuelSupply.setVentFlameArrester(Answer.NOT_APPLICABLE);
        judge(VentFlameArresterByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyWithoutAGasolineEngine() {
        fuelSupply.setVentFlameArrester(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(VentFlameArresterByLaw.check(), record).doesNotApply();
    }
}
