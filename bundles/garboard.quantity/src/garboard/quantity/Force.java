// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A force.
 *
 * <p>SI unit: newton.
 */
public final class Force extends Quantity<Force> {

    static final Kind<Force> KIND = new Kind<>(Force.class, Force::new, MechanicsUnits.FORCE);

    private Force(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the force of so many SI units (newton)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Force of(double si) {
        return new Force(si, Given.COMPUTED);
    }

    /**
     * {@return the force of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of force
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Force of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the force a text tells}
     *
     * @throws QuantityFormatException when the text is no force; the message says why and what would be right
     */
    public static Force valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Force> kind() {
        return KIND;
    }
}
