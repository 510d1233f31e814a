// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.AntiSiphonProtection;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;

class AntiSiphonValveHoldsTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aValve() {
        record.getFuelSupply().setAntiSiphon(AntiSiphonProtection.ANTI_SIPHON_VALVE);
    }

    private Judged valve(FuelKind fuel, String drop, String opensAt) {
        record.getGeneratorSet().setFuel(fuel);
        record.getFuelSupply().getTank().getTop().setZ(Length.of(0));
        record.getFuelSupply().setLowestLinePoint(Length.of(-Length.valueOf(drop).si()));
        record.getFuelSupply().setAntiSiphonCrackingPressure(PressureDifference.valueOf(opensAt));
        return judge(AntiSiphonValveHolds.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"GASOLINE, 0.3 m, 2.19", "GASOLINE, 0.5 m, 3.65", "DIESEL, 0.8 m, 6.59"})
    void columnBelowTheTank(FuelKind fuel, String drop, double kilopascal) {
        // recomputed from rho g h: gasoline 745 kg/m3, diesel 840 kg/m3
        valve(fuel, drop, "0.5 kPa").fallsShort().limit(kilopascal, "kPa", 0.005).afterRemedy().meets();
    }

    @Test
    void valveThatHoldsMeets() {
        // 0.5 m of gasoline: 3.65 kPa, 14.7 inH2O, 1.08 inHg
        valve(FuelKind.GASOLINE, "0.5 m", "14.7 inH2O").meets();
        valve(FuelKind.GASOLINE, "0.5 m", "1.07 inHg").fallsShort();
    }

    @Test
    void lineAboveTheTankPullsAtNothing() {
        valve(FuelKind.GASOLINE, "-0.2 m", "0 kPa").meets();
    }

    @Test
    void doesNotApplyWithoutAValve() {
        record.getFuelSupply().setAntiSiphon(AntiSiphonProtection.ELECTRIC_STOP_VALVE);
        valve(FuelKind.GASOLINE, "0.5 m", "0 kPa").doesNotApply();
    }

    @Test
    void cannotTellWithoutTheValvesPressure() {
        judge(AntiSiphonValveHolds.check(), record).cannotTell("fuelSupply.antiSiphonCrackingPressure", "fuelSupply.lowestLinePoint",
            "fuelSupply.tank.top.z", "generatorSet.fuel");
    }
}
