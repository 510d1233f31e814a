// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.BatteryBlock;
import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.quantity.Voltage;

class BatteryChargedTest {

    // US Army TM 5-3805-262-20: 12.6 / 12.4 / 12.2 / 12.0 V are 100 / 75 / 50 / 25 %, straight lines between; AGM and gel from memory
    @ParameterizedTest
    @CsvSource({ "FLOODED_LEAD_ACID, 12.50 V, 87.5, MEETS", "FLOODED_LEAD_ACID, 12.30 V, 62.5, FALLS_SHORT",
        "FLOODED_LEAD_ACID, 12.39 V, 73.75, FALLS_SHORT", "FLOODED_LEAD_ACID, 12.4 V, 75, MEETS",
        "FLOODED_LEAD_ACID, 12400 mV, 75, MEETS", "FLOODED_LEAD_ACID, 12.2 V, 50, FALLS_SHORT", "FLOODED_LEAD_ACID, 12.9 V, 100, MEETS",
        "FLOODED_LEAD_ACID, 12.01 V, 26.25, FALLS_SHORT", "AGM, 12.45 V, 62.5, FALLS_SHORT", "AGM, 12.6 V, 75, MEETS", "GEL, 12.65 V, 75, MEETS",
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

    // US Army TM 5-3805-262-20: 12.75 V 100 %, 12.35 V 68.75 %; together 25.10 V, half of which is 93.75 %
    @Test
    void aStringIsAsGoodAsItsWeakestBlock() {
        CommissioningRecord record = Bench.of24V(BatteryChemistry.FLOODED_LEAD_ACID);
        record.getStartingBattery().setRestedVoltage(Voltage.of(25.10, "V"));
        block(record, "A", "12.75 V");
        assertThat(judge(BatteryCharged.check(), record).meets().measured(93.75, "%", 0.0005).verdict().sentence()).contains("battery");
        block(record, "B", "12.35 V ±0.01 V");
        block(record, "C", null);
        assertThat(judge(BatteryCharged.check(), record).fallsShort().measured(68.75, "%", 0.0005).verdict().sentence()).contains("\"B\"");
    }

    @Test
    void aSixVoltBlockIsReadAsHalfOfATwelveVoltBlock() {
        CommissioningRecord record = Bench.flooded();
        record.getStartingBattery().setBlockVoltage(Voltage.of(6, "V"));
        record.getStartingBattery().setBlocksInSeries(2);
        record.getStartingBattery().setRestedVoltage(Voltage.of(12.6, "V"));
        block(record, null, "6.2 V"); // half of 12.4 V
        judge(BatteryCharged.check(), record).meets().measured(75, "%", 0.0005);
    }

    private static void block(CommissioningRecord record, String label, String rested) {
        BatteryBlock block = GarboardFactory.eINSTANCE.createBatteryBlock();
        block.setLabel(label);
        block.setRestedVoltage(rested == null ? null : Voltage.valueOf(rested));
        record.getStartingBattery().getBlocks().add(block);
    }

    @Test
    void stepsBackWhereTheBatteryMustNotBeCrankedWith() {
        CommissioningRecord record = Bench.flooded();
        record.getStartingBattery().setRestedVoltage(Voltage.of(12.0, "V")); // common practice: 12.0 V or less
        judge(BatteryCharged.check(), record).doesNotApply();
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
