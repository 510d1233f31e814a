// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;

/**
 * A closed band of values.
 *
 * @param low not above the other
 */
public record Band<Q extends Quantity<Q>>(Q low, Q high) {

    public Band {
        if (high.isLessThan(low)) {
            throw OutOfRangeException.of("upper end of the band", high, "at least the lower end of " + low);
        }
    }

    /** First step: the middle of the band. */
    public static <Q extends Quantity<Q>> Middle<Q> around(Q middle) {
        return new Middle<>(middle);
    }

    boolean contains(double si) {
        return si >= low.si() && si <= high.si();
    }

    /** The end of the band that a value outside it lies beyond. */
    double endTowards(double si) {
        return si < low.si() ? low.si() : high.si();
    }

    /** Waits for how wide the band is. */
    public record Middle<Q extends Quantity<Q>>(Q value) {

        /** Half the share of the rated value to each side: the reading of a band that is given by its full width. */
        public Band<Q> ofWidth(Ratio share, Q rated) {
            return plusMinus(Ratio.of(Argument.notNegative("width of the band", share) / 2), rated);
        }

        /** The share of the rated value to each side. */
        public Band<Q> plusMinus(Ratio share, Q rated) {
            double half = Argument.notNegative("half width of the band", share) * Argument.positive("rated value", rated);
            return new Band<>(value.kind().of(value.si() - half), value.kind().of(value.si() + half));
        }
    }
}
