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
import garboard.quantity.TimeSpan;

class BatteryRestedTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    // common practice: 6 to 24 h
    @ParameterizedTest
    @CsvSource({ "6 h, MEETS", "360 min, MEETS", "24 h, MEETS", "5.9 h, FALLS_SHORT", "3 min, FALLS_SHORT" })
    void restsSixHours(String rest, Standing standing) {
        battery.setRestTime(TimeSpan.valueOf(rest));
        judge(BatteryRested.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheTime() {
        judge(BatteryRested.check(), record).cannotTell("startingBattery.restTime");
    }

    @Test
    void doesNotApplyToLithium() {
        battery.setChemistry(BatteryChemistry.LITHIUM_IRON_PHOSPHATE);
        judge(BatteryRested.check(), record).doesNotApply();
    }
}
