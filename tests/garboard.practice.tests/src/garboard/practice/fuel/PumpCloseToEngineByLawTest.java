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

class PumpCloseToEngineByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    // 33 CFR 183.566, from memory
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSupply.setPumpWithinReachOfEngine(Answer.YES);
        judge(PumpCloseToEngineByLaw.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSupply.setPumpWithinReachOfEngine(Answer.NO);
        judge(PumpCloseToEngineByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(PumpCloseToEngineByLaw.check(), record).cannotTell("fuelSupply.pumpWithinReachOfEngine");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        fuelSupply.setPumpWithinReachOfEngine(Answer.NOT_APPLICABLE);
        judge(PumpCloseToEngineByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyWithoutAGasolineEngine() {
        fuelSupply.setPumpWithinReachOfEngine(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(PumpCloseToEngineByLaw.check(), record).doesNotApply();
    }
}
