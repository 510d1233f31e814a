// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.math.BigDecimal;

/** Writes doubles as locale-free decimals that read back to the same double. */
final class DecimalText {

    /** Numbers of more digits before the point, or more noughts behind it, are written with an exponent. */
    private static final int MOST_DIGITS_BEFORE_POINT = 15;
    private static final int MOST_NOUGHTS_BEHIND_POINT = 5;

    private DecimalText() {
    }

    /** {@return the shortest decimal that reads back as this finite number, like 0.0254 or 1.5e-12} */
    static String of(double number) {
        BigDecimal shortest = new BigDecimal(Double.toString(number)).stripTrailingZeros();
        if (shortest.signum() == 0) {
            return "0";
        }
        int digitsBeforePoint = shortest.precision() - shortest.scale();
        if (digitsBeforePoint <= MOST_DIGITS_BEFORE_POINT && digitsBeforePoint >= -MOST_NOUGHTS_BEHIND_POINT) {
            return shortest.toPlainString();
        }
        int exponent = digitsBeforePoint - 1;
        return shortest.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
    }
}
