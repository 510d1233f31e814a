// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.BatteryBlock;
import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.quantity.Ratio;

class CellsAgreeTest {

    private final CommissioningRecord record = Bench.flooded();
    private final BatteryBlock block = GarboardFactory.eINSTANCE.createBatteryBlock();

    @BeforeEach
    void blockListed() {
        record.getStartingBattery().getBlocks().add(block);
    }

    // US Army TM 9-6140-200-14: more than 0.025 is unserviceable
    @ParameterizedTest
    @CsvSource({ "1.240, 1.270, 0.030, FALLS_SHORT", "1.270, 1.240, 0.030, FALLS_SHORT", "1.245, 1.270, 0.025, MEETS",
        "1.2445, 1.270, 0.0255, FALLS_SHORT", "1.260, 1.270, 0.010, MEETS" })
    void cellsAreAlike(double low, double high, double spread, Standing standing) {
        block.setSpecificGravityLow(Ratio.of(low, "1"));
        block.setSpecificGravityHigh(Ratio.of(high, "1"));
        judge(CellsAgree.check(), record).is(standing).measured(spread, "1", 1e-9);
    }

    @Test
    void cannotTellWithoutReadings() {
        judge(CellsAgree.check(), record).cannotTell("startingBattery.blocks[0].specificGravityLow", "startingBattery.blocks[0].specificGravityHigh");
    }

    @Test
    void doesNotApplyToSealedBatteries() {
        record.getStartingBattery().setChemistry(BatteryChemistry.AGM);
        judge(CellsAgree.check(), record).doesNotApply();
    }
}
