// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelSystem;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.GaugePressure;

class RailPressureTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aPortInjectedGasolineSet() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getGeneratorSet().setFuelSystem(FuelSystem.PORT_INJECTION);
    }

    private Judged pressure(String reading) {
        record.getFuelSupply().setRailPressure(GaugePressure.valueOf(reading));
        return judge(RailPressure.check(), record);
    }

    @Test
    void usualRange() {
        // common practice: 38 to 42 psi; other engines 45 psi and more, trade press
        pressure("38 psi").meets();
        pressure("42 psi").meets();
        pressure("37.9 psi").fallsShort().limit(38, "psi", 1e-9);
        pressure("42.1 psi").fallsShort().limit(42, "psi", 1e-9);
    }

    @Test
    void unitsDoNotMatter() {
        // 38 psi are 262.0 kPa, 42 psi 289.6 kPa
        pressure("262.1 kPa").meets();
        pressure("289.5 kPa").meets();
        pressure("290 kPa").fallsShort();
    }

    @Test
    void makersRangeReplacesIt() {
        record.getGeneratorSet().getMakerLimits().setRailPressureLow(GaugePressure.of(50, "psi"));
        record.getGeneratorSet().getMakerLimits().setRailPressureHigh(GaugePressure.of(60, "psi"));
        pressure("55 psi").meets().limitFromMaker();
        pressure("42 psi").fallsShort();
    }

    @Test
    void halfARangeIsNone() {
        record.getGeneratorSet().getMakerLimits().setRailPressureLow(GaugePressure.of(50, "psi"));
        pressure("55 psi").cannotTell("generatorSet.makerLimits.railPressureHigh");
    }

    @Test
    void norIsItsOtherHalf() {
        record.getGeneratorSet().getMakerLimits().setRailPressureHigh(GaugePressure.of(60, "psi"));
        pressure("55 psi").cannotTell("generatorSet.makerLimits.railPressureLow");
    }

    @Test
    void doesNotApplyToCarburettorOrDiesel() {
        record.getGeneratorSet().setFuelSystem(FuelSystem.CARBURETTOR);
        pressure("1 psi").doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getGeneratorSet().setFuelSystem(FuelSystem.COMMON_RAIL);
        pressure("1 psi").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(RailPressure.check(), record).cannotTell("fuelSupply.railPressure");
    }
}
