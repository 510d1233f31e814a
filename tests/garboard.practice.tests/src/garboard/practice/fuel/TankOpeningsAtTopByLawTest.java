// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelTank;
import garboard.practice.testing.Installation;

class TankOpeningsAtTopByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelTank fuelTank = record.getFuelSupply().getTank();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    // 33 CFR 183.518
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelTank.setOpeningsAtTop(Answer.YES);
        judge(TankOpeningsAtTopByLaw.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelTank.setOpeningsAtTop(Answer.NO);
        judge(TankOpeningsAtTopByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(TankOpeningsAtTopByLaw.check(), record).cannotTell("fuelSupply.tank.openingsAtTop");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        fuelTank.setOpeningsAtTop(Answer.NOT_APPLICABLE);
        judge(TankOpeningsAtTopByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyWithoutAGasolineEngine() {
        fuelTank.setOpeningsAtTop(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(TankOpeningsAtTopByLaw.check(), record).doesNotApply();
    }
}
