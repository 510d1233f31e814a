// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.math.BigDecimal;

/** Writes doubles as plain, locale-free decimals that read back to the same double. */
final class DecimalText {

    private static final int MOST_PLAIN_DIGITS = 15;
    private static final int MOST_PLAIN_DECIMALS = 9;

    private DecimalText() {
    }

    /** {@return the shortest decimal that reads back as this number} Plain where that is short, else like 1.5e-12. */
    static String of(double number) {
        BigDecimal shortest = new BigDecimal(Double.toString(number)).stripTrailingZeros();
        int digitsBeforePoint = shortest.precision() - shortest.scale();
        if (shortest.signum() == 0) {
            return "0";
        }
        if (shortest.scale() <= MOST_PLAIN_DECIMALS + shortest.precision() && digitsBeforePoint <= MOST_PLAIN_DIGITS
            && digitsBeforePoint > -MOST_PLAIN_DECIMALS) {
            return shortest.toPlainString();
        }
        BigDecimal mantissa = shortest.movePointLeft(digitsBeforePoint - 1);
        return mantissa.stripTrailingZeros().toPlainString() + "e" + (digitsBeforePoint - 1);
    }
}
