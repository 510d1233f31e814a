// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * An electric resistance or an impedance.
 *
 * <p>SI unit: ohm. Mind the capital: {@code mohm} is a thousandth of an ohm, {@code Mohm} a million.
 */
public final class Resistance extends Quantity<Resistance> {

    static final Kind<Resistance> KIND = new Kind<>(Resistance.class, Resistance::new, ElectricalUnits.RESISTANCE);

    private Resistance(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the resistance of so many SI units (ohm)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Resistance of(double si) {
        return new Resistance(si, Given.COMPUTED);
    }

    /**
     * {@return the resistance of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of resistance
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Resistance of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the resistance a text tells}
     *
     * @throws QuantityFormatException when the text is no resistance; the message says why and what would be right
     */
    public static Resistance valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Resistance> kind() {
        return KIND;
    }
}
