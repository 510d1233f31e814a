// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.BatteryBlock;
import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

class CellsChargedTest {

    private final CommissioningRecord record = Bench.flooded();
    private final BatteryBlock block = GarboardFactory.eINSTANCE.createBatteryBlock();

    @BeforeEach
    void blockListed() {
        record.getStartingBattery().getBlocks().add(block);
    }

    // hydrometer correction of 0.004 per 10 degF from 80 degF (quoted): 1.250 is 1.238 at 50 degF, 1.258 at 100 degF;
    // 75 % of charge at 12.4 V: SG = 12.4 / 6 - 0.84 = 1.2267 (textbook relation, US Army TM 5-3805-262-20)
    @ParameterizedTest
    @CsvSource({ "1.250, 50 degF, 1.238, MEETS", "1.250, 10 degC, 1.238, MEETS", "1.250, 100 degF, 1.258, MEETS",
        "1.230, 50 degF, 1.218, FALLS_SHORT",
        "1.230, 80 degF, 1.230, MEETS", "1.226, 80 degF, 1.226, FALLS_SHORT", "1.227, 80 degF, 1.227, MEETS" })
    void reducedToEightyFahrenheit(double low, String temperature, double corrected, Standing standing) {
        block.setSpecificGravityLow(Ratio.of(low, "1"));
        record.getStartingBattery().setBatteryTemperature(Temperature.valueOf(temperature));
        judge(CellsCharged.check(), record).is(standing).measured(corrected, "1", 0.0005).limit(1.2267, "1", 0.00005);
    }

    @Test
    void cannotTellWithoutTheTemperature() {
        block.setSpecificGravityLow(Ratio.of(1.250, "1"));
        judge(CellsCharged.check(), record).cannotTell("startingBattery.batteryTemperature");
    }

    @Test
    void doesNotApplyToSealedBatteries() {
        record.getStartingBattery().setChemistry(BatteryChemistry.GEL);
        judge(CellsCharged.check(), record).doesNotApply();
    }
}
