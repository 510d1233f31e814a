// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__HIGH_ABOVE_BILGE;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Question;

class BatteryHighOnPassengerVesselTest {

    @Test
    void answered() { // 46 CFR 183.350
        Question.of(BatteryHighOnPassengerVessel.check(), STARTING_BATTERY__HIGH_ABOVE_BILGE).at(CommissioningRecord::getStartingBattery)
            .in(record -> record.getVessel().setService(VesselService.SMALL_PASSENGER))
            .demands(Answer.YES, "startingBattery.highAboveBilge");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        CommissioningRecord record = Bench.flooded();
        record.getVessel().setService(VesselService.FISHING);
        judge(BatteryHighOnPassengerVessel.check(), record).doesNotApply();
    }
}
