// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

class PostsWhileCrankingTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    // common practice: 9.6 / 9.5 / 9.4 / 9.3 / 9.1 / 8.9 / 8.7 / 8.5 V at 21 / 16 / 10 / 4 / -1 / -7 / -12 / -18 degC.
    // 10.34 V and 9.40 V: 12.7 V less 300 A through the 7.86 and 11.0 mohm of a 700 A and a 500 A block (recomputed)
    @ParameterizedTest
    @CsvSource({ "10.34 V, 25 degC, 9.6, MEETS", "9.40 V, 25 degC, 9.6, FALLS_SHORT", "9.6 V, 21 degC, 9.6, MEETS", "9600 mV, 70 degF, 9.6, MEETS",
        "9.59 V, 21 degC, 9.6, FALLS_SHORT", "9.5 V, 16 degC, 9.5, MEETS", "9.4 V, 10 degC, 9.4, MEETS", "9.3 V, 4 degC, 9.3, MEETS",
        "9.1 V, -1 degC, 9.1, MEETS", "8.9 V, -7 degC, 8.9, MEETS", "8.7 V, -12 degC, 8.7, MEETS", "8.5 V, -18 degC, 8.5, MEETS",
        "8.4 V, -25 degC, 8.5, FALLS_SHORT", "9.6 V, 55 degC, 9.6, MEETS" })
    void floorByTemperature(String posts, String temperature, double floorV, Standing standing) {
        battery.setCrankingVoltageAtPosts(Voltage.valueOf(posts));
        battery.setBatteryTemperature(Temperature.valueOf(temperature));
        judge(PostsWhileCranking.check(), record).is(standing).limit(floorV, "V", 0.01);
    }

    @Test
    void a24VStringHasTwiceTheFloor() {
        battery.setBlocksInSeries(2);
        battery.setBatteryTemperature(Temperature.of(21, "degC"));
        battery.setCrankingVoltageAtPosts(Voltage.of(21.47, "V")); // two 700 A blocks at 250 A: 25.4 V - 250 A x 2 x 7.86 mohm, recomputed
        judge(PostsWhileCranking.check(), record).meets().limit(19.2, "V", 1e-9); // common practice: 19.2 V
    }

    @Test
    void makersFigureTakesThePlace() {
        record.getGeneratorSet().getMakerLimits().setMinimumCrankingVoltage(Voltage.of(9.0, "V"));
        battery.setCrankingVoltageAtPosts(Voltage.of(9.2, "V"));
        judge(PostsWhileCranking.check(), record).meets().limitFromMaker();
    }

    @Test
    void cannotTellWithoutTemperature() {
        battery.setCrankingVoltageAtPosts(Voltage.of(10, "V"));
        judge(PostsWhileCranking.check(), record).cannotTell("startingBattery.batteryTemperature");
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(PostsWhileCranking.check(), record).cannotTell("startingBattery.crankingVoltageAtPosts");
    }

    @Test
    void doesNotApplyToLithium() {
        battery.setChemistry(BatteryChemistry.LITHIUM_IRON_PHOSPHATE);
        judge(PostsWhileCranking.check(), record).doesNotApply();
    }
}
