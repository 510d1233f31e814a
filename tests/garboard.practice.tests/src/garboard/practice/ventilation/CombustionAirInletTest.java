// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Area;
import garboard.quantity.Power;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.VolumeFlow;

class CombustionAirInletTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged inlet(String area) {
        record.getVentilation().setSupplyAreaTotal(Area.valueOf(area));
        return judge(CombustionAirInlet.check(), record);
    }

    private void makersAir(String flow) {
        record.getGeneratorSet().setCombustionAirFlow(VolumeFlow.valueOf(flow));
    }

    @Test
    void areaForTheMakersAir() {
        // recomputed: 1.80 m3/min at 6.68 m/s (63 Pa, K 2.5, 1.13 kg/m3) take 44.9 cm2
        makersAir("1.80 m3/min");
        inlet("44 cm2").fallsShort().limit(44.9, "cm2", 0.05).afterRemedy().meets();
        inlet("45 cm2").meets();
    }

    @ParameterizedTest
    @CsvSource({"DIESEL, 250, 22, 4.645", "DIESEL, 250, 28, 5.911", "GASOLINE, 360, 14, 4.256"})
    void airByFuelAndRatio(FuelKind fuel, double consumption, double ratio, double cubicMetresPerHour) {
        record.getGeneratorSet().setFuel(fuel);
        record.getGeneratorSet().setShaftPower(Power.of(100, "kW"));
        record.getGeneratorSet().setSpecificFuelConsumption(SpecificConsumption.of(consumption, "g/kWh"));
        record.getGeneratorSet().setAirFuelRatio(Ratio.of(ratio));
        // recomputed from BSFC x AFR / 1.184 kg/m3 (air of 25 degC): m3/h for each kW; through 1 cm2 go 6.678 m/s at 63 Pa
        inlet("1 cm2").fallsShort().limit(cubicMetresPerHour * 100 / 3600 / 6.6785 * 10000, "cm2", 0.1);
    }

    @Test
    void typicalFiguresWhereTheMakersAreNotKnown() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getGeneratorSet().setShaftPower(Power.of(22.47, "kW"));
        // typical small diesel, from memory: 250 g/kWh and 22; 1.74 m3/min of 25 degC take 43.4 cm2
        inlet("43 cm2").fallsShort().limit(43.4, "cm2", 0.05);
        inlet("44 cm2").meets();
    }

    @Test
    void makersDepressionChangesTheArea() {
        makersAir("1.80 m3/min");
        record.getGeneratorSet().getMakerLimits().setMaximumDepression(PressureDifference.of(4 * 63, "Pa"));
        // four times the depression, twice the velocity, half the area
        inlet("20 cm2").fallsShort().limit(22.5, "cm2", 0.05);
    }

    @Test
    void cannotTellWithoutThePower() {
        inlet("45 cm2").cannotTell("generatorSet.shaftPower", "generatorSet.fuel");
        record.getGeneratorSet().setShaftPower(Power.of(10, "kW"));
        inlet("45 cm2").cannotTell("generatorSet.fuel");
    }

    @Test
    void cannotTellWithoutTheInlet() {
        makersAir("1.80 m3/min");
        judge(CombustionAirInlet.check(), record).cannotTell("ventilation.supplyAreaTotal");
    }
}
