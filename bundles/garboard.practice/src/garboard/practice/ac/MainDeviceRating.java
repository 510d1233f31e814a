// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_RATING;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.physics.cable.OvercurrentDevice;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Current;

/** The rating of the main device against what the set gives. */
final class MainDeviceRating {

    private MainDeviceRating() {
    }

    /** Everything but share and authority. */
    static Check.Builder<AcOutput> check(String id) {
        return FullLoad.needed(Check.check(id, AcOutput.class))
            .why("A breaker too large for the set lets it be overloaded for hours, until its windings burn.")
            .gravity(Gravity.DANGER_TO_MACHINE)
            .needs(AC_OUTPUT__PROTECTION_RATING);
    }

    static Comparison compare(Situation<AcOutput> s, Current fullLoad, Limit<Current> limit) {
        return Comparison.atMost("a device of " + Figures.both(s.subject().getProtectionRating()) + " guards a set of " + Figures.both(fullLoad)
            + " at full load", s.subject().getProtectionRating(), limit);
    }

    /** The largest standard rating within a limit; below the smallest of them the whole ampere. */
    static Remedy smaller(Situation<AcOutput> s, Current limit) {
        Current largest = OvercurrentDevice.largestStandard(limit).orElseGet(() -> Rounding.down(limit, 1, "A"));
        return Remedy.of("Fit or set the device for at most " + Figures.both(largest)).setting(s.subject(), AC_OUTPUT__PROTECTION_RATING, largest);
    }
}
