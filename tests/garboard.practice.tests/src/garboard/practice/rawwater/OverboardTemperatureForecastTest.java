// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.MassFlow;
import garboard.quantity.Power;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

class OverboardTemperatureForecastTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aDieselSetOfTwentyKilowatts() {
        record.getGeneratorSet().setCooling(Cooling.HEAT_EXCHANGER);
        record.getGeneratorSet().setHeatToCoolant(Power.of(20, "kW"));
        record.getGeneratorSet().setExhaustMassFlow(MassFlow.of(0.03589));
        record.getGeneratorSet().setExhaustGasTemperature(Temperature.of(450, "degC"));
    }

    private Judged flow(String rated, String sea) {
        record.getRawWater().getPump().setRatedFlow(VolumeFlow.valueOf(rated));
        record.getRawWater().setDesignSeaTemperature(Temperature.valueOf(sea));
        return judge(OverboardTemperatureForecast.check(), record);
    }

    @Test
    void ordinarySetStaysCool() {
        // recomputed from the heat balance: 20 kW coolant and 15.4 kW exhaust in 24.43 L/min of 25 degC: 46.2 degC
        flow("24.43 L/min", "25 degC").meets().measured(46.2, "degC", 0.05);
    }

    @Test
    void leastFlowInWarmSea() {
        // recomputed from the heat balance: 60 degC overboard in a sea of 32 degC takes 18.6 L/min
        flow("18.5 L/min", "32 degC").fallsShort().limit(60, "degC", 1e-9);
        flow("18.7 L/min", "32 degC").meets();
    }

    @Test
    void remedyNamesAPumpThatWillDo() {
        flow("15 L/min", "32 degC").afterRemedy().meets();
        // the next whole litre above 18.6 L/min
        assertThat(record.getRawWater().getPump().getRatedFlow()).isEqualTo(VolumeFlow.of(19, "L/min"));
    }

    @Test
    void gasCoolerThanTheWaterLimitGivesNoHeat() {
        record.getGeneratorSet().setExhaustGasTemperature(Temperature.of(50, "degC"));
        // 20 kW alone in 24.42 L/min of 25 degC: a rise of 12 K
        flow("24.42 L/min", "25 degC").meets().measured(37.0, "degC", 0.05);
    }

    @Test
    void cannotTellWithoutTheExhaust() {
        record.getGeneratorSet().setExhaustMassFlow(null);
        flow("20 L/min", "25 degC").cannotTell("generatorSet.exhaustMassFlow");
    }

    @Test
    void doesNotApplyToKeelCooling() {
        record.getGeneratorSet().setCooling(Cooling.KEEL_COOLED);
        flow("1 L/min", "25 degC").doesNotApply();
    }
}
