// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

class AirChangesOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aSmallPassengerVesselOnGasoline() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
    }

    private Judged blower(String volume, String flow) {
        record.getVentilation().setGrossVolume(Volume.valueOf(volume));
        record.getVentilation().setBlowerRatedFlow(VolumeFlow.valueOf(flow));
        return judge(AirChangesOfPassengerVessel.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"500 ft3, 250", "501 ft3, 167", "1200 ft3, 300", "1600 ft3, 320"})
    void flowByVolume(String volume, double cfm) {
        // 46 CFR 182.460(b): one change in 2, 3, 4, 5 min; the flow drops at each edge
        blower(volume, "1 cfm").fallsShort().limit(cfm, "ft3/min", 0.5).afterRemedy().meets();
    }

    @Test
    void metricSpaces() {
        // the same: 14 m3 in 2 min are 7.0 m3/min, 20 m3 in 3 min 6.67
        blower("14 m3", "6.9 m3/min").fallsShort().limit(7.0, "m3/min", 1e-6);
        blower("14 m3", "7.0 m3/min").meets();
        blower("20 m3", "6.6 m3/min").fallsShort().limit(6.67, "m3/min", 0.005);
    }

    @Test
    void unitOfTheVolumeDoesNotMatter() {
        // 14.1 m3 are 497.9 ft3: 2 min, in whichever unit
        blower("14.1 m3", "1 cfm").limit(7.05, "m3/min", 0.005);
        blower("497.9 ft3", "1 cfm").limit(7.05, "m3/min", 0.005);
    }

    @Test
    void doesNotApplyToOthers() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        blower("500 ft3", "1 cfm").doesNotApply();
        record.getVessel().setService(VesselService.RECREATIONAL);
        blower("500 ft3", "1 cfm").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheVolume() {
        judge(AirChangesOfPassengerVessel.check(), record).cannotTell("ventilation.grossVolume", "ventilation.blowerRatedFlow");
    }
}
