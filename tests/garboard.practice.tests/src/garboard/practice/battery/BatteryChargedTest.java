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
import garboard.quantity.Voltage;

class BatteryChargedTest {

    // US Army TM 5-3805-262-20: 12.6 / 12.4 / 12.2 / 12.0 V are 100 / 75 / 50 / 25 %, straight lines between; AGM and gel from memory
    @ParameterizedTest
    @CsvSource({ "FLOODED_LEAD_ACID, 12.50 V, 87.5, MEETS", "FLOODED_LEAD_ACID, 12.30 V, 62.5, FALLS_SHORT",
        "FLOODED_LEAD_ACID, 12.39 V, 73.75, FALLS_SHORT", "FLOODED_LEAD_ACID, 12.4 V, 75, MEETS",
        "FLOODED_LEAD_ACID, 12400 mV, 75, MEETS", "FLOODED_LEAD_ACID, 12.2 V, 50, FALLS_SHORT", "FLOODED_LEAD_ACID, 12.9 V, 100, MEETS",
        "FLOODED_LEAD_ACID, 9.0 V, 0, FALLS_SHORT", "AGM, 12.45 V, 62.5, FALLS_SHORT", "AGM, 12.6 V, 75, MEETS", "GEL, 12.65 V, 75, MEETS",
        "GEL, 12.6 V, 70.833, FALLS_SHORT" })
    void chargeByTheCurveOfItsKind(BatteryChemistry chemistry, String rested, double perCent, Standing standing) {
        CommissioningRecord record = Bench.of(chemistry);
        record.getStartingBattery().setRestedVoltage(Voltage.valueOf(rested));
        judge(BatteryCharged.check(), record).is(standing).measured(perCent, "%", 0.0005);
    }

    @Test
    void a24VBankIsHalved() {
        CommissioningRecord record = Bench.of24V(BatteryChemistry.FLOODED_LEAD_ACID);
        record.getStartingBattery().setRestedVoltage(Voltage.of(24.60, "V"));
        judge(BatteryCharged.check(), record).fallsShort().measured(62.5, "%", 0.0005); // US Army TM 5-3805-262-20, half of 24.60 V
    }

    @Test
    void carriesTheAccuracyOfTheVoltmeter() {
        CommissioningRecord record = Bench.flooded();
        record.getStartingBattery().setRestedVoltage(Voltage.valueOf("12.45 V ±0.1 V")); // 81.25 % +- 12.5 %
        judge(BatteryCharged.check(), record).is(Standing.BORDERLINE);
        record.getStartingBattery().setRestedVoltage(Voltage.valueOf("12.45 V ±0.04 V")); // +- 5 %
        judge(BatteryCharged.check(), record).meets();
    }

    @Test
    void aChargingVoltageTellsNoCharge() {
        CommissioningRecord record = Bench.flooded();
        record.getStartingBattery().setRestedVoltage(Voltage.of(13.3, "V"));
        assertThat(judge(BatteryCharged.check(), record).fallsShort().verdict().measured()).isEmpty();
    }

    @Test
    void cannotTellWithoutTheVoltage() {
        judge(BatteryCharged.check(), Bench.flooded()).cannotTell("startingBattery.restedVoltage");
    }

    @Test
    void doesNotApplyToLithium() {
        judge(BatteryCharged.check(), Bench.of(BatteryChemistry.LITHIUM_IRON_PHOSPHATE)).doesNotApply();
    }
}
