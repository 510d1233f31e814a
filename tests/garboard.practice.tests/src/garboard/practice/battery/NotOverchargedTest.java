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

class NotOverchargedTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @ParameterizedTest
    @CsvSource({ "15.0 V, 20 degC, MEETS", "15.1 V, 20 degC, FALLS_SHORT", "15.1 V, 68 degF, FALLS_SHORT", "14.4 V, 35 degC, MEETS",
        "15.1 V, 19.9 degC, DOES_NOT_APPLY" }) // common practice
    void fifteenVoltsWhenWarm(String running, String temperature, Standing standing) {
        battery.setChargingVoltageRunning(Voltage.valueOf(running));
        battery.setBatteryTemperature(Temperature.valueOf(temperature));
        judge(NotOvercharged.check(), record).is(standing);
    }

    @Test
    void thirtyVoltsInA24VBank() {
        battery.setBlocksInSeries(2);
        battery.setBatteryTemperature(Temperature.of(25, "degC"));
        battery.setChargingVoltageRunning(Voltage.of(30.1, "V"));
        judge(NotOvercharged.check(), record).fallsShort().limit(30, "V", 1e-9); // common practice
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(NotOvercharged.check(), record).cannotTell("startingBattery.batteryTemperature", "startingBattery.chargingVoltageRunning");
    }

    @Test
    void doesNotApplyToLithium() {
        battery.setChemistry(BatteryChemistry.LITHIUM_IRON_PHOSPHATE);
        judge(NotOvercharged.check(), record).doesNotApply();
    }
}
