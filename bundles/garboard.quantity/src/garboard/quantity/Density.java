// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A density: mass by volume.
 *
 * <p>SI unit: kilogram per cubic metre.
 */
public final class Density extends Quantity<Density> {

    static final Kind<Density> KIND = new Kind<>(Density.class, Density::new, MechanicsUnits.DENSITY);

    private Density(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the density of so many SI units (kilogram per cubic metre)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Density of(double si) {
        return new Density(si, Given.COMPUTED);
    }

    /**
     * {@return the density of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of density
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Density of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the density a text tells}
     *
     * @throws QuantityFormatException when the text is no density; the message says why and what would be right
     */
    public static Density valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Density> kind() {
        return KIND;
    }
}
