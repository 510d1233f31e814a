// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.Optional;
import java.util.stream.DoubleStream;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;

/** Largest rating of the fuse or breaker that protects a conductor. */
public final class OvercurrentDevice {

    /** NFPA 70, 240.6, as far as remembered ({@link CableSources#STANDARD_DEVICE_SIZES}). */
    private static final double[] STANDARD_A = {
            15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400};
    private static final double CFR_MULTIPLE = 1.5;
    private static final double ALTERNATOR_MULTIPLE = 1.2;

    private OvercurrentDevice() {
    }

    /** Below 50 V, read literally: 150 % of Table 5 without its notes (33 CFR 183.455(c)(1), {@link CableSources#OVERCURRENT_33_CFR}). */
    public static Current limitBelow50VLiteral(ConductorRun run) {
        return Current.of(CFR_MULTIPLE * Ampacity33Cfr183.table5(run.size(), run.insulation()).si());
    }

    /** Below 50 V, read conservatively: 150 % of the permitted current after note 1. */
    public static Current limitBelow50VConservative(ConductorRun run) {
        return Current.of(CFR_MULTIPLE * Ampacity33Cfr183.allowedBelow50V(run).si());
    }

    /**
     * At 50 V or more: the permitted current; where no standard rating equals it, the next larger one as long as that is at most 150 % of it
     * (33 CFR 183.455(c)(2)); failing that the largest standard rating below. Nothing where even 15 A is too much. Throws above 400 A, where the
     * list ends.
     */
    public static Optional<Current> largestFrom50V(Current allowed) {
        double allowedA = Argument.between("permitted current", allowed, 1e-9, STANDARD_A[STANDARD_A.length - 1], "more than 0, at most 400 A");
        double nextA = DoubleStream.of(STANDARD_A).filter(rating -> rating >= allowedA).findFirst().orElseThrow();
        return nextA <= CFR_MULTIPLE * allowedA ? Optional.of(Current.of(nextA)) : largestStandard(allowed);
    }

    /** ISO 13297 allows no rating above the permitted current ({@link CableSources#OVERCURRENT_ISO}). */
    public static Optional<Current> largestIso(Current allowed) {
        return largestStandard(allowed);
    }

    /** Largest standard rating up to a limit; nothing below 15 A, where the list begins. */
    public static Optional<Current> largestStandard(Current limit) {
        double limitA = Argument.positive("limit", limit);
        return DoubleStream.of(STANDARD_A).filter(rating -> rating <= limitA).mapToObj(Current::of).reduce((smaller, larger) -> larger);
    }

    /** Smallest standard rating from a current up; throws above 400 A, where the list ends. */
    public static Current smallestStandard(Current atLeast) {
        double leastA = Argument.notNegative("current", atLeast);
        return DoubleStream.of(STANDARD_A).filter(rating -> rating >= leastA).mapToObj(Current::of).findFirst()
                .orElseThrow(() -> OutOfRangeException.of("current", atLeast, "at most 400 A"));
    }

    /** 120 % of the rated current of an alternator that does not limit itself ({@link CableSources#ALTERNATOR_DEVICE}). */
    public static Current alternatorLimit(Current rated) {
        return Current.of(ALTERNATOR_MULTIPLE * Argument.positive("rated current", rated));
    }
}
