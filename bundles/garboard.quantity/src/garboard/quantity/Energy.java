// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * An energy or a heat.
 *
 * <p>SI unit: joule. BTU is the International Table unit.
 */
public final class Energy extends Quantity<Energy> {

    static final Kind<Energy> KIND = new Kind<>(Energy.class, Energy::new, HeatUnits.ENERGY);

    private Energy(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the energy of so many SI units (joule)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Energy of(double si) {
        return new Energy(si, Given.COMPUTED);
    }

    /**
     * {@return the energy of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of energy
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Energy of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the energy a text tells}
     *
     * @throws QuantityFormatException when the text is no energy; the message says why and what would be right
     */
    public static Energy valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Energy> kind() {
        return KIND;
    }
}
