// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A slope as rise over run, 1 being 45 degrees.
 *
 * <p>SI unit: 1. In degrees it is the tangent and lies between -89.9 and 89.9 deg. A bare number is not read, because it
 * could be either: write {@code 0.04 1}, {@code 40 mm/m} or {@code 2.3 deg}.
 */
public final class Slope extends Quantity<Slope> {

    static final Kind<Slope> KIND = new Kind<>(Slope.class, Slope::new, GeometryUnits.SLOPE);

    private Slope(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the slope of so many SI units (1)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Slope of(double si) {
        return new Slope(si, Given.COMPUTED);
    }

    /**
     * {@return the slope of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of slope, or beyond 89.9 deg either way
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Slope of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the slope a text tells}
     *
     * @throws QuantityFormatException when the text is no slope; the message says why and what would be right
     */
    public static Slope valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Slope> kind() {
        return KIND;
    }
}
