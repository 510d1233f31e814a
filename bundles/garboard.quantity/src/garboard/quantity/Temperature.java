// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A temperature on a thermometer.
 *
 * <p>SI unit: kelvin. Nothing below 0 K is one: every way of making it refuses a lower value.
 */
public final class Temperature extends Quantity<Temperature> {

    static final Kind<Temperature> KIND = new Kind<>(Temperature.class, Temperature::new, HeatUnits.TEMPERATURE);

    private Temperature(double si, Given given) {
        super(notBelowZero(si), given);
    }

    /**
     * {@return the temperature of so many SI units (kelvin)}
     *
     * @throws IllegalArgumentException when the number is not finite or below 0 K
     */
    public static Temperature of(double si) {
        return new Temperature(si, Given.COMPUTED);
    }

    /**
     * {@return the temperature of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of temperature
     * @throws IllegalArgumentException when the number is not finite or below 0 K
     */
    public static Temperature of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the temperature a text tells}
     *
     * @throws QuantityFormatException when the text is no temperature; the message says why and what would be right
     */
    public static Temperature valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Temperature> kind() {
        return KIND;
    }

    /** {@return this less the other} */
    @Override
    public TemperatureDifference differenceFrom(Temperature other) {
        return TemperatureDifference.of(si() - other.si());
    }

    /**
     * {@return the same temperature with an accuracy to both sides, in place of an earlier one}
     *
     * @throws QuantityFormatException when the half width is negative
     */
    public Temperature withAccuracy(TemperatureDifference halfWidth) {
        return withHalfWidth(halfWidth);
    }

    private static double notBelowZero(double si) {
        if (si < 0) {
            throw new ImplausibleQuantityException(si + " K lies below absolute zero; "
                + "the lowest temperature is 0 K, -273.15 degC or -459.67 degF");
        }
        return si;
    }
}
