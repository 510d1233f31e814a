// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A length, a height, a bore or a distance.
 *
 * <p>SI unit: metre. Also read as feet and inches: {@code 5 ft 3 in}, {@code 5' 3 1/2"}.
 */
public final class Length extends Quantity<Length> {

    static final Kind<Length> KIND = new Kind<>(Length.class, Length::new, GeometryUnits.LENGTH);

    private Length(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the length of so many SI units (metre)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Length of(double si) {
        return new Length(si, Given.COMPUTED);
    }

    /**
     * {@return the length of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of length
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Length of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the length a text tells}
     *
     * @throws QuantityFormatException when the text is no length; the message says why and what would be right
     */
    public static Length valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Length> kind() {
        return KIND;
    }
}
