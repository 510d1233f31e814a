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

class ChargesWhileRunningTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    // common practice
    @ParameterizedTest
    @CsvSource({ "13.8 V, MEETS", "14.8 V, MEETS", "14200 mV, MEETS", "13.7 V, FALLS_SHORT", "14.9 V, FALLS_SHORT", "12.6 V, FALLS_SHORT" })
    void betweenTheLimits(String running, Standing standing) {
        battery.setChargingVoltageRunning(Voltage.valueOf(running));
        judge(ChargesWhileRunning.check(), record).is(standing);
    }

    @Test
    void a24VBankHasTwiceTheLimits() {
        battery.setBlocksInSeries(2);
        battery.setChargingVoltageRunning(Voltage.of(27.5, "V"));
        judge(ChargesWhileRunning.check(), record).fallsShort().limit(27.6, "V", 1e-9); // common practice: 27.6 to 29.6 V
        battery.setChargingVoltageRunning(Voltage.of(29.7, "V"));
        judge(ChargesWhileRunning.check(), record).fallsShort().limit(29.6, "V", 1e-9);
    }

    @Test
    void aColdBatteryMayHaveMore() {
        battery.setBatteryTemperature(Temperature.of(0, "degC"));
        battery.setChargingVoltageRunning(Voltage.of(14.85, "V")); // EN 50272-2: 6 (2.40 V + 25 K x 3 mV/K)
        judge(ChargesWhileRunning.check(), record).meets();
        battery.setChargingVoltageRunning(Voltage.of(14.86, "V"));
        judge(ChargesWhileRunning.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(ChargesWhileRunning.check(), record).cannotTell("startingBattery.chargingVoltageRunning");
    }

    @Test
    void doesNotApplyToLithium() {
        battery.setChemistry(BatteryChemistry.LITHIUM_IRON_PHOSPHATE);
        judge(ChargesWhileRunning.check(), record).doesNotApply();
    }
}
