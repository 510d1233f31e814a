// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Current;

/** Current that a load draws for a moment when it is switched on ({@link AcSources#INRUSH}). */
public enum Inrush {
    /** Transformer, first cycle. */
    TRANSFORMER(8, 12),
    /** Switch-mode charger or converter, for less than 10 ms. */
    SWITCH_MODE(10, 40);

    private final double leastMultiple;
    private final double mostMultiple;

    Inrush(double leastMultiple, double mostMultiple) {
        this.leastMultiple = leastMultiple;
        this.mostMultiple = mostMultiple;
    }

    /** Lower end of the usual range. */
    public Current least(Current rated) {
        return Current.of(leastMultiple * Argument.positive("rated current", rated));
    }

    /** Upper end of the usual range. */
    public Current most(Current rated) {
        return Current.of(mostMultiple * Argument.positive("rated current", rated));
    }
}
