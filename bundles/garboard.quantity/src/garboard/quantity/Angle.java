// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A plane angle: heel, trim, phase.
 *
 * <p>SI unit: radian.
 */
public final class Angle extends Quantity<Angle> {

    static final Kind<Angle> KIND = new Kind<>(Angle.class, Angle::new, GeometryUnits.ANGLE);

    private Angle(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the angle of so many SI units (radian)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Angle of(double si) {
        return new Angle(si, Given.COMPUTED);
    }

    /**
     * {@return the angle of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of angle
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Angle of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the angle a text tells}
     *
     * @throws QuantityFormatException when the text is no angle; the message says why and what would be right
     */
    public static Angle valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Angle> kind() {
        return KIND;
    }
}
