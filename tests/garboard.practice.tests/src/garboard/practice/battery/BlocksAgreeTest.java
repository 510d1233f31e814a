// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.BatteryBlock;
import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.quantity.Voltage;

class BlocksAgreeTest {

    private final CommissioningRecord record = Bench.of24V(BatteryChemistry.FLOODED_LEAD_ACID);

    private void block(String rested) {
        BatteryBlock block = GarboardFactory.eINSTANCE.createBatteryBlock();
        if (!rested.isEmpty()) {
            block.setRestedVoltage(Voltage.valueOf(rested));
        }
        record.getStartingBattery().getBlocks().add(block);
    }

    // common practice: within 0.1 V; 12.75 V and 12.35 V differ by 0.40 V
    @ParameterizedTest
    @CsvSource({ "12.75 V, 12.35 V, 0.40, FALLS_SHORT", "12.75 V, 12.65 V, 0.10, MEETS", "12.64 V, 12.75 V, 0.11, FALLS_SHORT",
        "12.75 V, 12.649 V, 0.101, FALLS_SHORT",
        "12.7 V, 12700 mV, 0, MEETS" })
    void blocksRestAlike(String one, String other, double spread, Standing standing) {
        block(one);
        block(other);
        judge(BlocksAgree.check(), record).is(standing).measured(spread, "V", 1e-9);
    }

    @Test
    void cannotTellWithoutBlocks() {
        judge(BlocksAgree.check(), record).cannotTell("startingBattery.blocks.restedVoltage");
    }

    @Test
    void cannotTellFromOneBlockOfTwo() {
        block("12.7 V");
        judge(BlocksAgree.check(), record).cannotTell("startingBattery.blocks");
    }

    @Test
    void cannotTellWhenOneIsNotMeasured() {
        block("12.7 V");
        block("");
        judge(BlocksAgree.check(), record).cannotTell("startingBattery.blocks[1].restedVoltage");
    }

    @Test
    void doesNotApplyToASingleBlock() {
        record.getStartingBattery().setBlocksInSeries(1);
        judge(BlocksAgree.check(), record).doesNotApply();
    }
}
