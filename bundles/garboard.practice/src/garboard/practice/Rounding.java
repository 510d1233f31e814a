// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import java.math.BigDecimal;

import garboard.quantity.Quantity;

/** Rounds computed figures of remedies to what a yard can mark out, order or set: always to the safe side that is named. */
public final class Rounding {

    /** Forgiven, so that a figure which is on a step but for binary rounding stays there. */
    private static final double SLACK = 1e-9;

    private Rounding() {
    }

    /** The next step of a unit up, or the same where it lies on one: {@code up(0.8083 m, 10, "mm")} is 810 mm. */
    public static <Q extends Quantity<Q>> Q up(Q quantity, double step, String unit) {
        return steps(quantity, Math.ceil(quantity.in(unit) / step - SLACK), step, unit);
    }

    /** The next step of a unit down, or the same where it lies on one. */
    public static <Q extends Quantity<Q>> Q down(Q quantity, double step, String unit) {
        return steps(quantity, Math.floor(quantity.in(unit) / step + SLACK), step, unit);
    }

    private static <Q extends Quantity<Q>> Q steps(Q quantity, double count, double step, String unit) {
        double number = BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(count)).doubleValue();
        return quantity.kind().of(number, unit);
    }
}
