// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

class ChargerFollowsTemperatureTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    // EN 50272-2 (quoted), absorption of six cells: 14.85 / 14.67 / 14.40 / 14.13 V at 0 / 10 / 25 / 40 degC; float vented 13.38 V at 25 degC
    @ParameterizedTest
    @CsvSource({ "14.85 V, 0 degC, MEETS", "14.86 V, 0 degC, FALLS_SHORT", "14.67 V, 10 degC, MEETS", "14.68 V, 10 degC, FALLS_SHORT",
        "14.40 V, 25 degC, MEETS", "14.40 V, 77 degF, MEETS", "14.41 V, 25 degC, FALLS_SHORT", "14.13 V, 40 degC, MEETS",
        "14.14 V, 40 degC, FALLS_SHORT",
        "13.38 V, 25 degC, MEETS", "13.37 V, 25 degC, FALLS_SHORT", "15.21 V, -40 degC, MEETS", "13.95 V, 60 degC, MEETS",
        "13.96 V, 60 degC, FALLS_SHORT" })
    void fromFloatToAbsorption(String charger, String temperature, Standing standing) {
        battery.setChargerVoltage(Voltage.valueOf(charger));
        battery.setBatteryTemperature(Temperature.valueOf(temperature));
        judge(ChargerFollowsTemperature.check(), record).is(standing);
    }

    @Test
    void valveRegulatedCellsFloatHigher() {
        battery.setChemistry(BatteryChemistry.AGM);
        battery.setBatteryTemperature(Temperature.of(25, "degC"));
        battery.setChargerVoltage(Voltage.of(13.5, "V"));
        judge(ChargerFollowsTemperature.check(), record).fallsShort().limit(13.62, "V", 1e-6); // EN 50272-2: 6 x 2.27 V
    }

    @Test
    void a24VBank() {
        battery.setBlocksInSeries(2);
        battery.setBatteryTemperature(Temperature.of(10, "degC"));
        battery.setChargerVoltage(Voltage.of(29.4, "V"));
        judge(ChargerFollowsTemperature.check(), record).fallsShort().limit(29.34, "V", 1e-6).afterRemedy().meets(); // EN 50272-2 for 12 cells
        assertThat(battery.getChargerVoltage().si()).isEqualTo(29.3);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(ChargerFollowsTemperature.check(), record).cannotTell("startingBattery.chargerVoltage", "startingBattery.batteryTemperature");
    }

    @Test
    void doesNotApplyToLithium() {
        battery.setChemistry(BatteryChemistry.LITHIUM_IRON_PHOSPHATE);
        judge(ChargerFollowsTemperature.check(), record).doesNotApply();
    }
}
