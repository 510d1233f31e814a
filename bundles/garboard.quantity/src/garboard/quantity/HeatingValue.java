// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * The lower heating value of a fuel: heat by mass.
 *
 * <p>SI unit: joule per kilogram.
 */
public final class HeatingValue extends Quantity<HeatingValue> {

    static final Kind<HeatingValue> KIND = new Kind<>(HeatingValue.class, HeatingValue::new, HeatUnits.HEATING_VALUE);

    private HeatingValue(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the heating value of so many SI units (joule per kilogram)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static HeatingValue of(double si) {
        return new HeatingValue(si, Given.COMPUTED);
    }

    /**
     * {@return the heating value of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of heating value
     * @throws IllegalArgumentException when the number is not finite
     */
    public static HeatingValue of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the heating value a text tells}
     *
     * @throws QuantityFormatException when the text is no heating value; the message says why and what would be right
     */
    public static HeatingValue valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<HeatingValue> kind() {
        return KIND;
    }
}
