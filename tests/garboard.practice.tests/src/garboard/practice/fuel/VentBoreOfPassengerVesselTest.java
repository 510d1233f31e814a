// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineRun;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class VentBoreOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    private FuelLineRun vent(FuelKind fuel, String bore) {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        record.getGeneratorSet().setFuel(fuel);
        FuelLineRun vent = FuelLines.add(record, FuelLineFunction.VENT);
        vent.setBore(Length.valueOf(bore));
        return vent;
    }

    // 46 CFR 182.450, from memory: tubes of 0.75 x 0.035 in (0.3632 in2, 234.3 mm2) and 0.625 x 0.035 in (0.2419 in2, 156.1 mm2)
    @ParameterizedTest
    @CsvSource({ "GASOLINE, 0.68 in, 17.27, MEETS", "GASOLINE, 17 mm, 17.27, FALLS_SHORT", "GASOLINE, 3/4 in, 17.27, MEETS", "DIESEL, 0.555 in, 14.10, MEETS",
        "DIESEL, 14 mm, 14.10, FALLS_SHORT", "DIESEL, 5/8 in, 14.10, MEETS" })
    void byTheFuel(FuelKind fuel, String bore, double leastMm, Standing standing) {
        vent(fuel, bore);
        judge(VentBoreOfPassengerVessel.check(), record).is(standing).limit(leastMm, "mm", 0.005);
    }

    @Test
    void remedyIsTheNextHose() {
        FuelLineRun vent = vent(FuelKind.DIESEL, "12 mm");
        judge(VentBoreOfPassengerVessel.check(), record).fallsShort().afterRemedy().meets();
        assertThat(vent.getBore().in("in")).isCloseTo(0.625, within(0.01));
    }

    @Test
    void looksAtVentsOnly() {
        FuelLines.add(record, FuelLineFunction.FILL);
        assertThat(Judged.all(VentBoreOfPassengerVessel.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutInputs() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
        FuelLines.add(record, FuelLineFunction.VENT);
        judge(VentBoreOfPassengerVessel.check(), record).cannotTell("fuelSupply.lines[line-1].bore", "generatorSet.fuel");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        vent(FuelKind.DIESEL, "6 mm");
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(VentBoreOfPassengerVessel.check(), record).doesNotApply();
    }
}
