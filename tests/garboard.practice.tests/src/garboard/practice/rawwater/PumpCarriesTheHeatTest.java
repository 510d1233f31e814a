// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Power;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

class PumpCarriesTheHeatTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aSetOfTwentyKilowattsToTheCoolant() {
        record.getGeneratorSet().setCooling(Cooling.HEAT_EXCHANGER);
        record.getGeneratorSet().setHeatToCoolant(Power.of(20, "kW"));
        record.getRawWater().setDesignSeaTemperature(Temperature.of(25, "degC"));
    }

    private Judged rated(String flow) {
        record.getRawWater().getPump().setRatedFlow(VolumeFlow.valueOf(flow));
        return judge(PumpCarriesTheHeat.check(), record);
    }

    @Test
    void fallsShortBelowTheHeatBalance() {
        // 20 kW over 12 K, sea water of 25 degC with 4.001 kJ/(kg.K) and 1023.6 kg/m3: 24.42 L/min; recomputed from Phi = rho Q cp dT
        rated("24.3 L/min").fallsShort().limit(24.42, "L/min", 0.005);
    }

    @Test
    void meetsAboveIt() {
        rated("24.5 L/min").meets();
        rated("6.5 gal/min").meets();
    }

    @ParameterizedTest
    @CsvSource({"20 kW, 24.4", "10.48 kW, 12.8"})
    void flowByHeat(String heat, double litresPerMinute) {
        // recomputed from Phi = rho Q cp dT at 12 K: diesel of 20 kW to the coolant; gasoline, 30 % of 34.94 kW
        record.getGeneratorSet().setHeatToCoolant(Power.valueOf(heat));
        rated("1 L/min").fallsShort().limit(litresPerMinute, "L/min", 0.05);
    }

    @Test
    void remedyNamesAPumpThatWillDo() {
        // the next whole litre above 24.42 L/min
        rated("20 L/min").afterRemedy().meets().measured(25, "L/min", 1e-9);
    }

    @Test
    void makersFlowReplacesTheHeatBalance() {
        record.getGeneratorSet().getMakerLimits().setMinimumRawWaterFlow(VolumeFlow.of(28, "L/min"));
        record.getGeneratorSet().setHeatToCoolant(null);
        rated("27.9 L/min").fallsShort().limit(28, "L/min", 1e-9).limitFromMaker();
        rated("28 L/min").meets();
    }

    @Test
    void cannotTellWithoutHeatOrFlow() {
        record.getGeneratorSet().setHeatToCoolant(null);
        judge(PumpCarriesTheHeat.check(), record).cannotTell("rawWater.pump.ratedFlow", "generatorSet.heatToCoolant");
    }

    @Test
    void doesNotApplyToKeelCooling() {
        record.getGeneratorSet().setCooling(Cooling.KEEL_COOLED);
        rated("1 L/min").doesNotApply();
    }
}
