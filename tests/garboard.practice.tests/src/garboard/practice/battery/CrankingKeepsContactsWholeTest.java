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
import garboard.quantity.Voltage;

class CrankingKeepsContactsWholeTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @ParameterizedTest
    @CsvSource({ "8.0 V, MEETS", "8000 mV, MEETS", "7.9 V, FALLS_SHORT", "9.4 V, MEETS" }) // common practice
    void eightVolts(String posts, Standing standing) {
        battery.setCrankingVoltageAtPosts(Voltage.valueOf(posts));
        judge(CrankingKeepsContactsWhole.check(), record).is(standing);
    }

    @Test
    void sixteenVoltsInA24VBank() {
        battery.setBlocksInSeries(2);
        battery.setCrankingVoltageAtPosts(Voltage.of(15.9, "V"));
        judge(CrankingKeepsContactsWhole.check(), record).fallsShort().limit(16, "V", 1e-9);
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(CrankingKeepsContactsWhole.check(), record).cannotTell("startingBattery.crankingVoltageAtPosts");
    }

    @Test
    void doesNotApplyToLithium() {
        battery.setChemistry(BatteryChemistry.LITHIUM_IRON_PHOSPHATE);
        judge(CrankingKeepsContactsWhole.check(), record).doesNotApply();
    }
}
