// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A speed of flow or of the boat.
 *
 * <p>SI unit: metre per second.
 */
public final class Speed extends Quantity<Speed> {

    static final Kind<Speed> KIND = new Kind<>(Speed.class, Speed::new, MechanicsUnits.SPEED);

    private Speed(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the speed of so many SI units (metre per second)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Speed of(double si) {
        return new Speed(si, Given.COMPUTED);
    }

    /**
     * {@return the speed of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of speed
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Speed of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the speed a text tells}
     *
     * @throws QuantityFormatException when the text is no speed; the message says why and what would be right
     */
    public static Speed valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Speed> kind() {
        return KIND;
    }
}
