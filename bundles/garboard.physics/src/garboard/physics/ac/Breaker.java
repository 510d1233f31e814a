// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Current;
import garboard.quantity.Ratio;

/**
 * A miniature circuit breaker in front of a fault ({@link AcSources#TRIP_BANDS}).
 *
 * @param rating rated current
 * @param curve its magnetic trip
 */
public record Breaker(Current rating, Curve curve) {

    public Breaker {
        Argument.positive("breaker rating", rating);
    }

    /** Magnetic trip bands as multiples of the rating. */
    public enum Curve {
        B(3, 5), C(5, 10), D(10, 20);

        private final double holds;
        private final double trips;

        Curve(double holds, double trips) {
            this.holds = holds;
            this.trips = trips;
        }
    }

    /** Whether a fault trips the breaker at once. */
    public enum Trip {
        /** Every breaker of the curve trips. */
        SURE,
        /** Some do. */
        UNSURE,
        /** None does; it stays with the slow thermal trip. */
        NONE
    }

    /** Up to this current no breaker of the curve trips at once. */
    public Current holdsUpTo() {
        return Current.of(rating.si() * curve.holds);
    }

    /** From this current on every breaker of the curve trips at once. */
    public Current tripsFrom() {
        return Current.of(rating.si() * curve.trips);
    }

    public Trip on(Current fault) {
        double faultA = Argument.notNegative("fault current", fault);
        if (faultA >= tripsFrom().si()) {
            return Trip.SURE;
        }
        return faultA > holdsUpTo().si() ? Trip.UNSURE : Trip.NONE;
    }

    /** Short-circuit current that a set sustains: a multiple of its rated current; about 3 where its regulator has a short-circuit boost. */
    public static Current sustainedShortCircuit(Current rated, Ratio multiple) {
        double times = Argument.between("multiple of the rated current", multiple, 0.1, 10, "0.1 to 10");
        return Current.of(times * Argument.positive("rated current", rated));
    }
}
