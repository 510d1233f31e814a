// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A difference or rise of temperature: 1 degC is 1 K, 1 degF is 5/9 K, without offset.
 *
 * <p>SI unit: kelvin.
 */
public final class TemperatureDifference extends Quantity<TemperatureDifference> {

    static final Kind<TemperatureDifference> KIND = new Kind<>(TemperatureDifference.class, TemperatureDifference::new, HeatUnits.TEMPERATURE_DIFFERENCE);

    private TemperatureDifference(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the temperature difference of so many SI units (kelvin)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static TemperatureDifference of(double si) {
        return new TemperatureDifference(si, Given.COMPUTED);
    }

    /**
     * {@return the temperature difference of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of temperature difference
     * @throws IllegalArgumentException when the number is not finite
     */
    public static TemperatureDifference of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the temperature difference a text tells}
     *
     * @throws QuantityFormatException when the text is no temperature difference; the message says why and what would be right
     */
    public static TemperatureDifference valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<TemperatureDifference> kind() {
        return KIND;
    }
}
