// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * An electric charge: the capacity of a battery.
 *
 * <p>SI unit: coulomb. 1 Ah is 3600 C.
 */
public final class Charge extends Quantity<Charge> {

    static final Kind<Charge> KIND = new Kind<>(Charge.class, Charge::new, ElectricalUnits.CHARGE);

    private Charge(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the charge of so many SI units (coulomb)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Charge of(double si) {
        return new Charge(si, Given.COMPUTED);
    }

    /**
     * {@return the charge of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of charge
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Charge of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the charge a text tells}
     *
     * @throws QuantityFormatException when the text is no charge; the message says why and what would be right
     */
    public static Charge valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Charge> kind() {
        return KIND;
    }
}
