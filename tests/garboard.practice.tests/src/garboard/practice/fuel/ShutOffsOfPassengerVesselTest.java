// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class ShutOffsOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aSmallPassengerVessel() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    private Judged shutOffs(Answer tank, Answer engine) {
        record.getFuelSupply().setTankShutOff(tank);
        record.getFuelSupply().setEngineShutOff(engine);
        return judge(ShutOffsOfPassengerVessel.check(), record);
    }

    @Test
    void bothEndsAreWanted() {
        // 46 CFR 182.455, from memory; 119.455 alike: at the tank and at the engine
        shutOffs(Answer.YES, Answer.YES).meets();
        shutOffs(Answer.YES, Answer.NO).fallsShort();
        shutOffs(Answer.NO, Answer.YES).fallsShort();
        shutOffs(Answer.NO, Answer.NO).fallsShort();
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        shutOffs(Answer.NO, Answer.NO).doesNotApply();
    }

    @Test
    void cannotTellWithoutAnswers() {
        judge(ShutOffsOfPassengerVessel.check(), record).cannotTell("fuelSupply.tankShutOff", "fuelSupply.engineShutOff");
    }
}
