// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Quantity;

/**
 * A measured value held against a limit with the expanded uncertainty as guard band ({@link MeasurementSources#GUARD_BAND}).
 *
 * @param measured the value
 * @param limit what it is held against
 * @param side whether the limit is the highest or the lowest permitted value
 * @param guard expanded uncertainty, of the kind of differences of the value, 0 or more
 */
public record GuardBandDecision<Q extends Quantity<Q>>(Q measured, Q limit, Side side, Quantity<?> guard) {

    /** Sums of rounded decimals meet in decimals, not in binary. */
    private static final double ROUNDING = 1e-12;

    /** Which side of the limit is permitted. */
    public enum Side {
        AT_MOST, AT_LEAST
    }

    public GuardBandDecision {
        Class<?> difference = measured.differenceFrom(limit).getClass();
        if (guard.getClass() != difference || guard.si() < 0) {
            throw OutOfRangeException.of("expanded uncertainty", guard, "0 or more, a " + difference.getSimpleName());
        }
    }

    /** First step: the measured value. */
    public static <Q extends Quantity<Q>> Measured<Q> measured(Q value) {
        return new Measured<>(value);
    }

    /** Distance inside the limit, negative beyond it. */
    public Quantity<?> margin() {
        return side == Side.AT_MOST ? limit.differenceFrom(measured) : measured.differenceFrom(limit);
    }

    public Conformity outcome() {
        double marginSi = margin().si();
        double slack = ROUNDING * (Math.abs(limit.si()) + Math.abs(measured.si()));
        if (marginSi >= guard.si() - slack) {
            return Conformity.PASS;
        }
        if (marginSi >= -slack) {
            return Conformity.CONDITIONAL_PASS;
        }
        return marginSi >= -guard.si() - slack ? Conformity.CONDITIONAL_FAIL : Conformity.FAIL;
    }

    /** Waits for the limit, so that the two cannot be swapped unseen. */
    public record Measured<Q extends Quantity<Q>>(Q value) {

        public GuardBandDecision<Q> atMost(Q limit, Quantity<?> expandedUncertainty) {
            return new GuardBandDecision<>(value, limit, Side.AT_MOST, expandedUncertainty);
        }

        public GuardBandDecision<Q> atLeast(Q limit, Quantity<?> expandedUncertainty) {
            return new GuardBandDecision<>(value, limit, Side.AT_LEAST, expandedUncertainty);
        }
    }
}
