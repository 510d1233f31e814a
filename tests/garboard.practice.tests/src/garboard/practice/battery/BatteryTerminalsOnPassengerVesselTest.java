// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.TerminalKind;
import garboard.model.VesselService;

class BatteryTerminalsOnPassengerVesselTest {

    private final CommissioningRecord record = Bench.flooded();

    @ParameterizedTest
    @CsvSource({ "POST_CLAMP, MEETS", "BOLTED_LUG, MEETS", "SPRING_CLIP, FALLS_SHORT" }) // 46 CFR 183.350
    void permanent(TerminalKind terminals, Standing standing) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getStartingBattery().setTerminals(terminals);
        judge(BatteryTerminalsOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(BatteryTerminalsOnPassengerVessel.check(), record).cannotTell("vessel.service", "startingBattery.terminals");
    }

    @Test
    void doesNotApplyToYachts() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(BatteryTerminalsOnPassengerVessel.check(), record).doesNotApply();
    }
}
