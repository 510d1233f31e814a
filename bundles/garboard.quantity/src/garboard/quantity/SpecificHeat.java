// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A specific heat: heat by mass and kelvin.
 *
 * <p>SI unit: joule per kilogram and kelvin.
 */
public final class SpecificHeat extends Quantity<SpecificHeat> {

    static final Kind<SpecificHeat> KIND = new Kind<>(SpecificHeat.class, SpecificHeat::new, HeatUnits.SPECIFIC_HEAT);

    private SpecificHeat(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the specific heat of so many SI units (joule per kilogram and kelvin)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static SpecificHeat of(double si) {
        return new SpecificHeat(si, Given.COMPUTED);
    }

    /**
     * {@return the specific heat of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of specific heat
     * @throws IllegalArgumentException when the number is not finite
     */
    public static SpecificHeat of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the specific heat a text tells}
     *
     * @throws QuantityFormatException when the text is no specific heat; the message says why and what would be right
     */
    public static SpecificHeat valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<SpecificHeat> kind() {
        return KIND;
    }
}
