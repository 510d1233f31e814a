// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.quantity.Voltage;

class BatteryMayCrankTest {

    private final CommissioningRecord record = Bench.flooded();

    // common practice: at 12.0 V or less do not crank
    @ParameterizedTest
    @CsvSource({ "12.1 V, MEETS", "12.0 V, FALLS_SHORT", "12000 mV, FALLS_SHORT", "11.8 V, FALLS_SHORT" })
    void aboveTwelveVolts(String rested, Standing standing) {
        record.getStartingBattery().setRestedVoltage(Voltage.valueOf(rested));
        judge(BatteryMayCrank.check(), record).is(standing);
    }

    @Test
    void a24VBankIsJudgedByItsBlocks() {
        CommissioningRecord bank = Bench.of24V(BatteryChemistry.AGM);
        bank.getStartingBattery().setRestedVoltage(Voltage.of(24.0, "V"));
        judge(BatteryMayCrank.check(), bank).fallsShort().limit(24.0, "V", 1e-9);
    }

    @Test
    void cannotTellWithoutTheVoltage() {
        judge(BatteryMayCrank.check(), record).cannotTell("startingBattery.restedVoltage");
    }

    @Test
    void doesNotApplyToLithium() {
        judge(BatteryMayCrank.check(), Bench.of(BatteryChemistry.LITHIUM_IRON_PHOSPHATE)).doesNotApply();
    }
}
