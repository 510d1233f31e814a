// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import garboard.quantity.ImplausibleInput;

/** A lower limit above the upper one, as when a maker's two limits were entered the wrong way round. */
final class ContradictoryLimitsException extends IllegalArgumentException implements ImplausibleInput {

    private static final long serialVersionUID = 1L;

    ContradictoryLimitsException(Limit<?> low, Limit<?> high) {
        super("the lower limit " + low.value() + " (" + low.origin() + ") is above the upper limit " + high.value() + " ("
                + high.origin() + "); it has to be below it");
    }
}
