// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Power;
import garboard.quantity.Ratio;

class ShaftPowerEnoughTest {

    private final CommissioningRecord record = Installation.empty();

    // conservation of energy: 22.47 kW x 0.89 are 20.0 kW; 97 % of 20 kW are 19.4 kW
    @ParameterizedTest
    @CsvSource({ "22.47 kW, 0.89, 20.0, MEETS", "30.14 hp, 89 %, 20.0, MEETS", "19.4 kW, 1, 19.4, MEETS", "19.3 kW, 1, 19.3, FALLS_SHORT",
        "20 kW, 0.89, 17.8, FALLS_SHORT" })
    void drivesTheAlternator(String shaft, String efficiency, double electricalKw, Standing standing) {
        record.getGeneratorSet().setShaftPower(Power.valueOf(shaft));
        record.getGeneratorSet().setAlternatorEfficiency(Ratio.valueOf(efficiency));
        record.getGeneratorSet().setRatedPower(Power.of(20, "kW"));
        judge(ShaftPowerEnough.check(), record).is(standing).measured(electricalKw, "kW", 0.05);
    }

    @Test
    void cannotTellWithoutAllThree() {
        judge(ShaftPowerEnough.check(), record).cannotTell("generatorSet.shaftPower", "generatorSet.alternatorEfficiency", "generatorSet.ratedPower");
    }
}
