// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * An electric current; rms for alternating current.
 *
 * <p>SI unit: ampere.
 */
public final class Current extends Quantity<Current> {

    static final Kind<Current> KIND = new Kind<>(Current.class, Current::new, ElectricalUnits.CURRENT);

    private Current(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the current of so many SI units (ampere)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Current of(double si) {
        return new Current(si, Given.COMPUTED);
    }

    /**
     * {@return the current of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of current
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Current of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the current a text tells}
     *
     * @throws QuantityFormatException when the text is no current; the message says why and what would be right
     */
    public static Current valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Current> kind() {
        return KIND;
    }
}
