// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;

class LeastGaugeOnPassengerVesselTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    @BeforeEach
    void applies() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    // 46 CFR 183.340(c): 14 AWG for power and lighting, 22 AWG for control
    @ParameterizedTest
    @CsvSource({ "OTHER_DC, 14 AWG, MEETS", "OTHER_DC, 16 AWG, FALLS_SHORT", "CHARGING, 2.5 mm2, MEETS", "CHARGING, 1.5 mm2, FALLS_SHORT",
        "CONTROL, 22 AWG, MEETS",
        "CONTROL, 24 AWG, FALLS_SHORT", "CONTROL, 16 AWG, MEETS" })
    void thickEnough(CableFunction function, String size, Standing standing) {
        Wiring.add(record, function).setConductorSize(size);
        judge(LeastGaugeOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void remedyIsAThickerOne() {
        CableRun run = Wiring.add(record, CableFunction.FUEL_PUMP);
        run.setConductorSize("16 AWG");
        judge(LeastGaugeOnPassengerVessel.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getConductorSize()).isEqualTo("14 AWG");
    }

    @Test
    void theOutputCableCarriesPower() {
        CommissioningRecord whole = Installation.empty();
        whole.getVessel().setService(VesselService.SMALL_PASSENGER);
        whole.getAcOutput().getOutputCable().setConductorSize("16 AWG");
        judge(LeastGaugeOnPassengerVessel.check(), whole).fallsShort();
    }

    @Test
    void cannotTellWithoutTheFunction() {
        Wiring.add(record, CableFunction.NOT_ENTERED).setConductorSize("16 AWG");
        judge(LeastGaugeOnPassengerVessel.check(), record).cannotTell("startingBattery.cables[0].function");
    }

    @Test
    void doesNotApplyToYachts() {
        Wiring.add(record, CableFunction.OTHER_DC);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(LeastGaugeOnPassengerVessel.check(), record).doesNotApply();
    }
}
