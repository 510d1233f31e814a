// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__SECURED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Question;

class BatterySecuredOnPassengerVesselTest {

    @Test
    void answered() { // 46 CFR 183.350
        Question.of(BatterySecuredOnPassengerVessel.check(), STARTING_BATTERY__SECURED).at(CommissioningRecord::getStartingBattery)
            .in(record -> record.getVessel().setService(VesselService.SMALL_PASSENGER))
            .demands(Answer.YES, "startingBattery.secured");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Bench.flooded();
        record.getVessel().setService(VesselService.FISHING);
        judge(BatterySecuredOnPassengerVessel.check(), record).doesNotApply();
    }
}
