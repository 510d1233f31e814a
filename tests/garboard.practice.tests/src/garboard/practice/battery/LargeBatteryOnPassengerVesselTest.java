// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.model.VesselService;
import garboard.quantity.Area;
import garboard.quantity.Current;

class LargeBatteryOnPassengerVesselTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @BeforeEach
    void emergencySetOfAPassengerVessel() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        battery.setEmergencySource(Answer.YES);
    }

    // 46 CFR 183.352: 12 V x 60 A = 720 W is small, 24 V x 100 A = 2400 W large, 2000 W exactly small
    @ParameterizedTest
    @CsvSource({ "1, 60 A, MEETS", "2, 100 A, FALLS_SHORT", "2, 83.3333333333 A, MEETS", "2, 84 A, FALLS_SHORT" })
    void classByTheChargersPower(int blocks, String current, Standing standing) {
        battery.setBlocksInSeries(blocks);
        battery.setChargerRatedCurrent(Current.valueOf(current));
        battery.setTrayOrBox(Answer.NO);
        battery.setVentilationAreaEachWay(Area.of(10, "cm2"));
        judge(LargeBatteryOnPassengerVessel.check(), record).is(standing);
    }

    @ParameterizedTest
    @CsvSource({ "YES, 10 cm2, MEETS", "YES, 0 cm2, FALLS_SHORT", "NO, 10 cm2, FALLS_SHORT" }) // 46 CFR 183.354(a)
    void aLargeOneHasAVentilatedPlaceOfItsOwn(Answer box, String area, Standing standing) {
        battery.setBlocksInSeries(2);
        battery.setChargerRatedCurrent(Current.of(100, "A"));
        battery.setTrayOrBox(box);
        battery.setVentilationAreaEachWay(Area.valueOf(area));
        judge(LargeBatteryOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void remedyNamesTheAir() {
        battery.setBlocksInSeries(2);
        battery.setChargerRatedCurrent(Current.of(100, "A"));
        battery.setTrayOrBox(Answer.NO);
        battery.setVentilationAreaEachWay(Area.of(0));
        // 46 CFR 111.15-10 (from memory): 0.11 x 25 A x 12 cells = 33.0 m3/h = 550 L/min = 19.42 ft3/min
        assertThat(judge(LargeBatteryOnPassengerVessel.check(), record).fallsShort().verdict().remedy().orElseThrow().text()).contains("550 L/min");
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(LargeBatteryOnPassengerVessel.check(), record).cannotTell("startingBattery.chargerRatedCurrent");
        battery.setChargerRatedCurrent(Current.of(200, "A"));
        judge(LargeBatteryOnPassengerVessel.check(), record).cannotTell("startingBattery.trayOrBox", "startingBattery.ventilationAreaEachWay");
        battery.setTrayOrBox(Answer.YES);
        judge(LargeBatteryOnPassengerVessel.check(), record).cannotTell("startingBattery.ventilationAreaEachWay");
    }

    @Test
    void doesNotApplyElsewhere() {
        battery.setEmergencySource(Answer.NO);
        judge(LargeBatteryOnPassengerVessel.check(), record).doesNotApply();
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(LargeBatteryOnPassengerVessel.check(), record).doesNotApply();
    }
}
