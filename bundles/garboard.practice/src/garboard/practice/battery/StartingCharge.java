// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCK_CAPACITY;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__STRINGS_IN_PARALLEL;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.StartingBattery;
import garboard.physics.battery.StartSeries;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;

/** Ampere-hours for a series of starts without recharging. */
final class StartingCharge {

    private static final int STARTS = 6;
    private static final TimeSpan EACH = TimeSpan.of(10, "s");
    private static final Ratio SHARE = Ratio.of(20, "%");

    private StartingCharge() {
    }

    /** Everything that ordinary sets and emergency sets have in common. */
    static Check.Builder<StartingBattery> check(String id) {
        return Check.check(id, StartingBattery.class)
            .why("A set that does not fire at once has to be tried again, with rests, and the battery must still be good for the last try.")
            .needs(STARTING_BATTERY__BLOCK_CAPACITY, STARTING_BATTERY__STRINGS_IN_PARALLEL);
    }

    static Comparison compare(StartingBattery battery, Limit<Charge> limit) {
        return Comparison.atLeast("the bank holds " + Figures.both(Bank.capacity(battery)), Bank.capacity(battery), limit);
    }

    /** Six starts of 10 s out of a fifth of the capacity. */
    static Limit<Charge> sixStarts(Current cranking) {
        return Limit.of(new StartSeries(STARTS, EACH, cranking).capacityNeeded(SHARE), "6 starts of 10 s out of 20 % of the rated charge");
    }

    static Remedy larger(StartingBattery battery, Limit<Charge> limit) {
        Charge block = Rounding.up(Charge.of(limit.value().si() / battery.getStringsInParallel()), 5, "Ah");
        return Remedy.of("Fit blocks of at least " + Figures.both(block) + " each, or add a string in parallel")
            .setting(battery, STARTING_BATTERY__BLOCK_CAPACITY, block);
    }
}
