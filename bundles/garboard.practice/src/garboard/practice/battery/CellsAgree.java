// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH;
import static garboard.model.GarboardPackage.Literals.BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW;

import java.util.List;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.BatteryBlock;
import garboard.physics.battery.Hydrometer;
import garboard.practice.Sources;
import garboard.quantity.Ratio;

/** The cells of a flooded block have nearly the same acid. */
final class CellsAgree {

    private static final Ratio MOST = Ratio.of(0.025);

    private CellsAgree() {
    }

    static Check<BatteryBlock> check() {
        return Check.check("BATTERY-CELL-SPREAD", BatteryBlock.class)
            .title("Cells of a flooded block have the same specific gravity")
            .why("A cell that lags behind fails first, and takes the block with it under the starter.")
            .basis(Sources.US_ARMY_CELL_SPREAD)
            .gravity(Gravity.DEFECT)
            .limit("at most 0.025 between the highest and the lowest cell")
            .applies(BatteryConditions.flooded())
            .needs(BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW, BATTERY_BLOCK__SPECIFIC_GRAVITY_HIGH)
            .holds(CellsAgree::compare)
            .remedy("Equalise the charge and measure again; replace the block if the cells still differ")
            .build();
    }

    private static Comparison compare(Situation<BatteryBlock> s) {
        Ratio spread = Hydrometer.cellSpread(List.of(s.subject().getSpecificGravityLow(), s.subject().getSpecificGravityHigh()));
        return Comparison.atMost("the cells differ by " + SpecificGravity.inWords(spread), spread, Limit.of(MOST, "US Army TM 9-6140-200-14"));
    }
}
