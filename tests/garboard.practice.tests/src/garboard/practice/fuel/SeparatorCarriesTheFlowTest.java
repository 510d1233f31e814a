// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelSystem;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Power;
import garboard.quantity.VolumeFlow;

class SeparatorCarriesTheFlowTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aDieselSet() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getGeneratorSet().setShaftPower(Power.of(22.47, "kW"));
    }

    private Judged rated(String flow) {
        record.getFuelSupply().getSeparator().setRatedFlow(VolumeFlow.valueOf(flow));
        return judge(SeparatorCarriesTheFlow.check(), record);
    }

    @ParameterizedTest
    @CsvSource({"22.47, 20.53", "10, 9.14"})
    void dieselByPower(double kilowatts, double litresPerHour) {
        // filter trade council: 0.18 US gal/h for each hp, which is 0.914 L/h per kW
        record.getGeneratorSet().setShaftPower(Power.of(kilowatts, "kW"));
        rated("1 L/h").fallsShort().limit(litresPerHour, "L/h", 0.005);
    }

    @Test
    void gasolineWithCarburettorByPower() {
        // filter trade council: 0.10 US gal/h for each hp; 8.125 kW give 4.12 L/h
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getGeneratorSet().setFuelSystem(FuelSystem.CARBURETTOR);
        record.getGeneratorSet().setShaftPower(Power.of(8.125, "kW"));
        rated("4.1 L/h").fallsShort().limit(4.12, "L/h", 0.005);
        rated("4.2 L/h").meets();
    }

    @Test
    void injectedGasolineNeedsThePumpsData() {
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getGeneratorSet().setFuelSystem(FuelSystem.PORT_INJECTION);
        rated("100 L/h").cannotTell("fuelSupply.pumpFlow");
        // a rule from cars: 151 L/h (40 gal/h)
        record.getFuelSupply().setPumpFlow(VolumeFlow.of(40, "gal/h"));
        rated("150 L/h").fallsShort().limit(151, "L/h", 0.5);
        rated("40 gal/h").meets();
    }

    @Test
    void knownPumpFlowComesBeforeTheRule() {
        record.getFuelSupply().setPumpFlow(VolumeFlow.of(60, "L/h"));
        rated("59 L/h").fallsShort();
        rated("60 L/h").meets();
    }

    @Test
    void makersFlowComesBeforeBoth() {
        record.getFuelSupply().setPumpFlow(VolumeFlow.of(60, "L/h"));
        record.getGeneratorSet().getMakerLimits().setRequiredSeparatorFlow(VolumeFlow.of(90, "L/h"));
        rated("60 L/h").fallsShort().limitFromMaker();
    }

    @Test
    void remedyNamesTheSeparator() {
        // 20.53 L/h, to the next whole litre
        rated("10 L/h").afterRemedy().meets().measured(21, "L/h", 1e-9);
    }

    @Test
    void cannotTellWithoutThePower() {
        record.getGeneratorSet().setShaftPower(null);
        rated("20 L/h").cannotTell("generatorSet.shaftPower");
    }
}
