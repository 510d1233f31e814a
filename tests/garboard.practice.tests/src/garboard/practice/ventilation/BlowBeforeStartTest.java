// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.Area;
import garboard.quantity.TimeSpan;

class BlowBeforeStartTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void gasoline() {
        Compartments.gasoline(record, "60 ft3");
    }

    // label of 33 CFR 183.610(f): 4 minutes
    @ParameterizedTest
    @CsvSource({ "4 min, MEETS", "240 s, MEETS", "239 s, FALLS_SHORT", "60 s, FALLS_SHORT" })
    void atLeastFourMinutes(String time, Standing standing) {
        record.getAlarms().setVapourBeforeStart(TimeSpan.valueOf(time));
        judge(BlowBeforeStart.check(), record).is(standing).limit(4, "min", 1e-9);
    }

    @Test
    void remedyRunsItLonger() {
        record.getAlarms().setVapourBeforeStart(TimeSpan.of(60, "s"));
        judge(BlowBeforeStart.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheTime() {
        judge(BlowBeforeStart.check(), record).cannotTell("alarms.vapourBeforeStart");
    }

    @Test
    void doesNotApplyToDieselToOpenSpacesOrWhereTheLawSpeaks() {
        record.getAlarms().setVapourBeforeStart(TimeSpan.of(60, "s"));
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        judge(BlowBeforeStart.check(), record).doesNotApply();
        record.getVessel().setService(VesselService.RECREATIONAL);
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(900, "in2")); // 15 in2 for each of 60 ft3
        judge(BlowBeforeStart.check(), record).doesNotApply();
        record.getVentilation().setOpenAreaToAtmosphere(Area.of(0));
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(BlowBeforeStart.check(), record).doesNotApply();
    }
}
