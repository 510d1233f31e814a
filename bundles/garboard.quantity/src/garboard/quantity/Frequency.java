// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A frequency of alternating current or of a vibration.
 *
 * <p>SI unit: hertz. Shaft speeds are {@link RotationalSpeed}.
 */
public final class Frequency extends Quantity<Frequency> {

    static final Kind<Frequency> KIND = new Kind<>(Frequency.class, Frequency::new, MechanicsUnits.FREQUENCY);

    private Frequency(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the frequency of so many SI units (hertz)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Frequency of(double si) {
        return new Frequency(si, Given.COMPUTED);
    }

    /**
     * {@return the frequency of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of frequency
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Frequency of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the frequency a text tells}
     *
     * @throws QuantityFormatException when the text is no frequency; the message says why and what would be right
     */
    public static Frequency valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Frequency> kind() {
        return KIND;
    }
}
