// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BATTERY_TEMPERATURE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.BatteryBlock;
import garboard.physics.battery.Hydrometer;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** The weakest cell's acid, reduced to 26.7 degC, belongs to a battery of three quarters of its charge. */
final class CellsCharged {

    /** 75 % of charge of a flooded 12 V battery: US Army TM 5-3805-262-20. */
    private static final Voltage THREE_QUARTERS = Voltage.of(12.4, "V");

    private static final int CELLS = 6;

    private CellsCharged() {
    }

    static Check<BatteryBlock> check() {
        return Check.check("BATTERY-CELL-GRAVITY", BatteryBlock.class)
            .title("Weakest cell holds at least three quarters of its charge")
            .why("The voltage of a block hides one weak cell among five good ones; the hydrometer does not.")
            .basis(Basis.derived("75 % of charge at 12.4 V, E = n (SG + 0.84) V, a textbook relation from memory; "
                + "hydrometer read at 26.7 degC (80 degF)")
                .othersSay("full at 1.265 or 1.280, by the maker's filling"))
            .gravity(Gravity.DEFECT)
            .limit("at least 1.227 after correction to 26.7 degC (80 degF): 0.004 for each 10 degF")
            .applies(BatteryConditions.flooded())
            .needs(BATTERY_BLOCK__SPECIFIC_GRAVITY_LOW)
            .needs(STARTING_BATTERY__BATTERY_TEMPERATURE)
            .holds(CellsCharged::compare)
            .remedy("Charge the block, equalise it and measure again; replace it if the cell stays behind")
            .build();
    }

    private static Comparison compare(Situation<BatteryBlock> s) {
        Ratio corrected = Hydrometer.correctedTo80F(s.subject().getSpecificGravityLow(), BatteryConditions.battery(s).getBatteryTemperature());
        return Comparison.atLeast("the lowest cell reads " + SpecificGravity.inWords(s.subject().getSpecificGravityLow()) + ", which is "
            + SpecificGravity.inWords(corrected) + " at 26.7 degC (80 degF)", corrected,
            Limit.of(Hydrometer.gravityFor(THREE_QUARTERS, CELLS), "E = n (SG + 0.84) V at 12.4 V"));
    }
}
