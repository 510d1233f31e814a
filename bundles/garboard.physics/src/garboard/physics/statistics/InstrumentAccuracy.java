// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;

/**
 * Accuracy as a data sheet states it: so much per cent of the reading and so many digits. Not for temperatures, of which a per cent means nothing.
 *
 * @param ofReading share of the reading
 * @param digits steps of the last place
 * @param step one step of the last place
 */
public record InstrumentAccuracy<Q extends Quantity<Q>>(Ratio ofReading, int digits, Q step) {

    public InstrumentAccuracy {
        Argument.between("share of the reading", ofReading, 0, 1, "0 to 100 %");
        Argument.notNegative("last place", step);
        if (digits < 0) {
            throw OutOfRangeException.of("digits", digits, "0 or more");
        }
    }

    /** Half width of the interval around a reading: share x |reading| + digits x step. */
    public Q halfWidth(Q reading) {
        return reading.kind().of(ofReading.si() * Math.abs(reading.si()) + digits * step.si());
    }
}
