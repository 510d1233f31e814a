// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

class BlowBeforeStartOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    private void space(String volume, String flow, String time) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVentilation().setGrossVolume(Volume.valueOf(volume));
        record.getVentilation().setBlowerRatedFlow(VolumeFlow.valueOf(flow));
        record.getAlarms().setVapourBeforeStart(TimeSpan.valueOf(time));
    }

    // 46 CFR 185.352: V / Q: 400 ft3 at 250 cfm 1.6 min; 800 ft3 at 400 cfm 2.0 min
    @ParameterizedTest
    @CsvSource({ "400 ft3, 250 cfm, 96 s, 1.6, MEETS", "400 ft3, 250 cfm, 95 s, 1.6, FALLS_SHORT", "800 ft3, 400 cfm, 2 min, 2.0, MEETS",
        "800 ft3, 400 cfm, 1.9 min, 2.0, FALLS_SHORT" })
    void oneChangeOfAir(String volume, String flow, String time, double leastMin, Standing standing) {
        space(volume, flow, time);
        judge(BlowBeforeStartOfPassengerVessel.check(), record).is(standing).limit(leastMin, "min", 1e-9);
    }

    @Test
    void remedyRoundsUpToTenSeconds() {
        space("400 ft3", "250 cfm", "30 s");
        judge(BlowBeforeStartOfPassengerVessel.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAlarms().getVapourBeforeStart()).isEqualTo(TimeSpan.of(100, "s"));
    }

    @Test
    void cannotTellWithoutInputs() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        judge(BlowBeforeStartOfPassengerVessel.check(), record).cannotTell("alarms.vapourBeforeStart", "ventilation.grossVolume",
            "ventilation.blowerRatedFlow");
    }

    @Test
    void doesNotApplyToDieselOrOtherVessels() {
        space("400 ft3", "250 cfm", "30 s");
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(BlowBeforeStartOfPassengerVessel.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(BlowBeforeStartOfPassengerVessel.check(), record).doesNotApply();
    }
}
