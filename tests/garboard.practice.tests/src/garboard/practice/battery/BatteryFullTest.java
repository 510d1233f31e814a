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
import garboard.practice.testing.Installation;
import garboard.quantity.Voltage;

class BatteryFullTest {

    // flooded: US Army TM 5-3805-262-20, 12.6 V is 100 %; AGM and gel: typical values, from memory.
    // A flooded battery with acid of 1.265 rests at 6 (1.265 + 0.84) = 12.63 V (textbook relation) and is full, though 12.8 V is often asked for.
    @ParameterizedTest
    @CsvSource({ "FLOODED_LEAD_ACID, 12.63 V, MEETS", "FLOODED_LEAD_ACID, 12.6 V, MEETS", "FLOODED_LEAD_ACID, 12600 mV, MEETS",
        "FLOODED_LEAD_ACID, 12.59 V, FALLS_SHORT", "AGM, 12.63 V, FALLS_SHORT", "AGM, 12.79 V, FALLS_SHORT", "AGM, 12.8 V, MEETS",
        "GEL, 12.8 V, FALLS_SHORT", "GEL, 12.85 V, MEETS" })
    void fullOfItsKind(BatteryChemistry chemistry, String rested, Standing standing) {
        CommissioningRecord record = Bench.of(chemistry);
        record.getStartingBattery().setRestedVoltage(Voltage.valueOf(rested));
        judge(BatteryFull.check(), record).is(standing);
    }

    @Test
    void limitOfA24VBankIsTwiceAsHigh() {
        CommissioningRecord record = Bench.of24V(BatteryChemistry.AGM);
        record.getStartingBattery().setRestedVoltage(Voltage.of(25.6, "V"));
        judge(BatteryFull.check(), record).meets().limit(25.6, "V", 1e-9); // common practice: 25.6 V
    }

    @Test
    void limitCountsCellsAndNotBlocks() {
        CommissioningRecord record = Bench.flooded();
        record.getStartingBattery().setBlockVoltage(Voltage.of(6, "V"));
        record.getStartingBattery().setBlocksInSeries(4);
        record.getStartingBattery().setRestedVoltage(Voltage.of(25.1, "V"));
        judge(BatteryFull.check(), record).fallsShort().limit(25.2, "V", 1e-9); // four 6 V blocks are 24 V: 2 x 12.6 V
    }

    @Test
    void stepsBackWhereTheChargeIsTooLowOrCannotBeTold() {
        CommissioningRecord record = Bench.flooded();
        record.getStartingBattery().setRestedVoltage(Voltage.of(12.3, "V")); // US Army TM 5-3805-262-20: 62.5 %
        judge(BatteryFull.check(), record).doesNotApply();
        record.getStartingBattery().setRestedVoltage(Voltage.of(13.3, "V")); // charging, which BATTERY-CHARGE tells
        judge(BatteryFull.check(), record).doesNotApply();
    }

    @Test
    void borderlineWithinTheVoltmetersAccuracy() {
        CommissioningRecord record = Bench.flooded();
        record.getStartingBattery().setRestedVoltage(Voltage.valueOf("12.62 V ±0.5 %"));
        judge(BatteryFull.check(), record).is(Standing.BORDERLINE);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(BatteryFull.check(), Installation.empty()).cannotTell("startingBattery.chemistry", "startingBattery.restedVoltage",
            "startingBattery.blockVoltage", "startingBattery.blocksInSeries");
    }

    @Test
    void doesNotApplyToLithium() {
        judge(BatteryFull.check(), Bench.of(BatteryChemistry.LITHIUM_IRON_PHOSPHATE)).doesNotApply();
    }
}
