// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.quantity.Area;

class BatteryVentilatedOnPassengerVesselTest {

    private final CommissioningRecord record = Bench.flooded();

    @ParameterizedTest
    @CsvSource({ "1 cm2, MEETS", "0 cm2, FALLS_SHORT", "0 in2, FALLS_SHORT" }) // 46 CFR 183.350(a): ventilation, no size
    void someVentilation(String area, Standing standing) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getStartingBattery().setVentilationAreaEachWay(Area.valueOf(area));
        judge(BatteryVentilatedOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(BatteryVentilatedOnPassengerVessel.check(), record).cannotTell("vessel.service", "startingBattery.ventilationAreaEachWay");
    }

    @Test
    void doesNotApplyToYachts() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(BatteryVentilatedOnPassengerVessel.check(), record).doesNotApply();
    }
}
