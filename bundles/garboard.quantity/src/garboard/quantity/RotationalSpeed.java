// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A shaft speed.
 *
 * <p>SI unit: radian per second.
 */
public final class RotationalSpeed extends Quantity<RotationalSpeed> {

    static final Kind<RotationalSpeed> KIND = new Kind<>(RotationalSpeed.class, RotationalSpeed::new, MechanicsUnits.ROTATIONAL_SPEED);

    private RotationalSpeed(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the rotational speed of so many SI units (radian per second)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static RotationalSpeed of(double si) {
        return new RotationalSpeed(si, Given.COMPUTED);
    }

    /**
     * {@return the rotational speed of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of rotational speed
     * @throws IllegalArgumentException when the number is not finite
     */
    public static RotationalSpeed of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the rotational speed a text tells}
     *
     * @throws QuantityFormatException when the text is no rotational speed; the message says why and what would be right
     */
    public static RotationalSpeed valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<RotationalSpeed> kind() {
        return KIND;
    }
}
