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

class PumpStopsWithEngineByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        record.getFuelSupply().setElectricPump(Answer.YES);
    }

    // 33 CFR 183.524
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSupply.setPumpStopsWithEngine(Answer.YES);
        judge(PumpStopsWithEngineByLaw.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSupply.setPumpStopsWithEngine(Answer.NO);
        judge(PumpStopsWithEngineByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(PumpStopsWithEngineByLaw.check(), record).cannotTell("fuelSupply.pumpStopsWithEngine");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        fuelSupply.setPumpStopsWithEngine(Answer.NOT_APPLICABLE);
        judge(PumpStopsWithEngineByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyWithoutAGasolineEngine() {
        fuelSupply.setPumpStopsWithEngine(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(PumpStopsWithEngineByLaw.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToOtherPumps() {
        fuelSupply.setPumpStopsWithEngine(Answer.NO);
        record.getFuelSupply().setElectricPump(Answer.NO);
        judge(PumpStopsWithEngineByLaw.check(), record).doesNotApply();
    }
}
