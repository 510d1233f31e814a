// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A mass.
 *
 * <p>SI unit: kilogram.
 */
public final class Mass extends Quantity<Mass> {

    static final Kind<Mass> KIND = new Kind<>(Mass.class, Mass::new, MechanicsUnits.MASS);

    private Mass(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the mass of so many SI units (kilogram)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Mass of(double si) {
        return new Mass(si, Given.COMPUTED);
    }

    /**
     * {@return the mass of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of mass
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Mass of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the mass a text tells}
     *
     * @throws QuantityFormatException when the text is no mass; the message says why and what would be right
     */
    public static Mass valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Mass> kind() {
        return KIND;
    }
}
