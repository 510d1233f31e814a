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
import garboard.quantity.Area;
import garboard.quantity.Charge;

class HydrogenVentsTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    // EN 50272-2 (quoted): 12 cells of 200 Ah, vented boost 2.40 m3/h and 67 cm2, valve-regulated 0.96 m3/h and 27 cm2; 6 cells of 100 Ah vented 17 cm2
    @ParameterizedTest
    @CsvSource({ "FLOODED_LEAD_ACID, 2, 200 Ah, 68 cm2, 67, MEETS", "FLOODED_LEAD_ACID, 2, 200 Ah, 67 cm2, 67, FALLS_SHORT",
        "AGM, 2, 200 Ah, 27 cm2, 27, MEETS", "GEL, 2, 200 Ah, 26 cm2, 27, FALLS_SHORT", "FLOODED_LEAD_ACID, 1, 100 Ah, 17 cm2, 17, MEETS",
        "FLOODED_LEAD_ACID, 1, 100 Ah, 1680 mm2, 17, MEETS", "FLOODED_LEAD_ACID, 1, 100 Ah, 2.5 in2, 17, FALLS_SHORT",
        "FLOODED_LEAD_ACID, 1, 100 Ah, 2.7 in2, 17, MEETS" })
    void openingsForBoostCharge(BatteryChemistry chemistry, int blocks, String capacity, String area, double neededCm2, Standing standing) {
        battery.setChemistry(chemistry);
        battery.setBlocksInSeries(blocks);
        battery.setBlockCapacity(Charge.valueOf(capacity));
        battery.setVentilationAreaEachWay(Area.valueOf(area));
        judge(HydrogenVents.check(), record).is(standing).limit(neededCm2, "cm2", 0.5);
    }

    @Test
    void remedyOpensEnough() {
        battery.setBlockCapacity(Charge.of(100, "Ah"));
        battery.setVentilationAreaEachWay(Area.of(0));
        judge(HydrogenVents.check(), record).fallsShort().afterRemedy().meets();
        assertThat(battery.getVentilationAreaEachWay()).isEqualTo(Area.of(17, "cm2"));
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(HydrogenVents.check(), record).cannotTell("startingBattery.ventilationAreaEachWay", "startingBattery.blockCapacity");
    }

    @Test
    void doesNotApplyToLithium() {
        battery.setChemistry(BatteryChemistry.LITHIUM_IRON_PHOSPHATE);
        judge(HydrogenVents.check(), record).doesNotApply();
    }
}
