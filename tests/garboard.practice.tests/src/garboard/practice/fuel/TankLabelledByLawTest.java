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

class TankLabelledByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelTank fuelTank = record.getFuelSupply().getTank();

    @BeforeEach
    void applies() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
    }

    // 33 CFR 183.514
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelTank.setLabelled(Answer.YES);
        judge(TankLabelledByLaw.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelTank.setLabelled(Answer.NO);
        judge(TankLabelledByLaw.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(TankLabelledByLaw.check(), record).cannotTell("fuelSupply.tank.labelled");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        fuelTank.setLabelled(Answer.NOT_APPLICABLE);
        judge(TankLabelledByLaw.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyWithoutAGasolineEngine() {
        fuelTank.setLabelled(Answer.NO);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(TankLabelledByLaw.check(), record).doesNotApply();
    }
}
