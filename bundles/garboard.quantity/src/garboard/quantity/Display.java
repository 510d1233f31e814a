// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes quantities for reading: in the customary unit of a system, rounded to what a reader can use, decimals with a point
 * whatever the machine's language. The text as given is {@link Quantity#toString()}.
 */
public final class Display {

    private final UnitSystem system;

    private Display(UnitSystem system) {
        this.system = system;
    }

    /** {@return the display in a system of units} */
    public static Display of(UnitSystem system) {
        return new Display(system);
    }

    /** {@return the system of units} */
    public UnitSystem system() {
        return system;
    }

    /** {@return the quantity in the customary unit for its size, for example {@code 154 mm}, {@code 6.45 gal/min}} */
    public String format(Quantity<?> quantity) {
        return formatIn(quantity, DisplayUnits.unitFor(quantity.kind(), system, quantity.si()));
    }

    /**
     * {@return the quantity in a unit, rounded in the same way}
     *
     * @throws QuantityFormatException when the text is no unit of the kind
     */
    public static String formatIn(Quantity<?> quantity, String unit) {
        return rounded(quantity.in(unit), DisplayUnits.digits(quantity.kind())) + " " + unit;
    }

    /** Rounds to significant digits, but never a digit before the point. */
    private static String rounded(double number, int digits) {
        BigDecimal exact = BigDecimal.valueOf(number);
        int beforePoint = exact.precision() - exact.scale();
        return DecimalText.of(exact.round(new MathContext(Math.max(digits, beforePoint), RoundingMode.HALF_UP)).doubleValue());
    }
}
