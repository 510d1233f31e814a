// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__INSULATION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION_RATING;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.CableRun;
import garboard.physics.cable.OvercurrentDevice;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Current;

/** The rating of a fuse or breaker against the conductor behind it. */
final class DeviceRating {

    private DeviceRating() {
    }

    /** Everything below 50 V but limit and authority. */
    static Check.Builder<CableRun> below50V(String id) {
        return Check.check(id, CableRun.class)
            .among(CableRuns::below50V, CableRuns.decidingVoltage())
            .why("A fuse too large lets the conductor glow before it blows.")
            .applies(CableConditions.workingCircuit())
            .applies(CableConditions.deviceFitted())
            .applies(CableConditions.readableSize())
            .needs(CABLE_RUN__PROTECTION_RATING, CABLE_RUN__INSULATION);
    }

    /** 33 CFR 183.455(c)(1) read literally, 150 % of Table 5 without its notes: everything but authority. */
    static Check.Builder<CableRun> literal(String id) {
        return below50V(id)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 150 % of 33 CFR 183.425 Table 5, read literally: without the factor for engine spaces")
            .holds(s -> compare(s.subject(), s.subject().getProtectionRating(), literalLimit(s.subject())))
            .remedy("Fit a smaller device or lay a larger conductor", s -> smaller(s, literalLimit(s.subject())));
    }

    private static Optional<Limit<Current>> literalLimit(CableRun run) {
        return Table5.conductor(run, CableRuns.size(run)).map(OvercurrentDevice::limitBelow50VLiteral)
            .map(most -> Limit.of(most, "33 CFR 183.455(c)(1): 150 % of Table 5"));
    }

    static Comparison compare(CableRun run, Current rating, Optional<Limit<Current>> limit) {
        String found = "a device of " + Figures.both(rating) + " protects " + Table5.inWords(run);
        return limit.map(most -> Comparison.atMost(found + ", which takes at most " + Figures.both(most.value()), rating, most))
            .orElseGet(() -> Comparison.holds(found + ", which is thinner than 18 AWG, where the table begins", false));
    }

    /** The largest standard rating within a limit; below those the whole ampere. */
    static Current largest(Current limit) {
        return OvercurrentDevice.largestStandard(limit).orElseGet(() -> Rounding.down(limit, 1, "A"));
    }

    static Remedy smaller(Current largest) {
        return Remedy.of("Fit a device of at most " + Figures.both(largest) + ", or lay a larger conductor");
    }

    /** For a device that is entered with its cable. */
    static Optional<Remedy> smaller(Situation<CableRun> s, Optional<Limit<Current>> limit) {
        return limit.map(most -> largest(most.value()))
            .map(largest -> smaller(largest).setting(s.subject(), CABLE_RUN__PROTECTION_RATING, largest));
    }
}
