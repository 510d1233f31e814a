// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelSupply;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;

class BackfireArresterOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    @BeforeEach
    void applies() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
    }

    // 46 CFR 58.10-5
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSupply.setBackfireFlameArrester(Answer.YES);
        judge(BackfireArresterOfPassengerVessel.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSupply.setBackfireFlameArrester(Answer.NO);
        judge(BackfireArresterOfPassengerVessel.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(BackfireArresterOfPassengerVessel.check(), record).cannotTell("fuelSupply.backfireFlameArrester");
    }

    @Test
    void fallsShortWhenALawIsMarkedAsNotApplicable() {
        fuelSupply.setBackfireFlameArrester(Answer.NOT_APPLICABLE);
        judge(BackfireArresterOfPassengerVessel.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyToOtherVessels() {
        fuelSupply.setBackfireFlameArrester(Answer.NO);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(BackfireArresterOfPassengerVessel.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyToDiesel() {
        fuelSupply.setBackfireFlameArrester(Answer.NO);
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(BackfireArresterOfPassengerVessel.check(), record).doesNotApply();
    }
}
