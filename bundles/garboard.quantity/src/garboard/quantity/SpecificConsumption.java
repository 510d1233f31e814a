// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A brake specific fuel consumption: fuel mass by shaft energy.
 *
 * <p>SI unit: kilogram per joule.
 */
public final class SpecificConsumption extends Quantity<SpecificConsumption> {

    static final Kind<SpecificConsumption> KIND = new Kind<>(SpecificConsumption.class, SpecificConsumption::new, HeatUnits.SPECIFIC_CONSUMPTION);

    private SpecificConsumption(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the specific consumption of so many SI units (kilogram per joule)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static SpecificConsumption of(double si) {
        return new SpecificConsumption(si, Given.COMPUTED);
    }

    /**
     * {@return the specific consumption of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of specific consumption
     * @throws IllegalArgumentException when the number is not finite
     */
    public static SpecificConsumption of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the specific consumption a text tells}
     *
     * @throws QuantityFormatException when the text is no specific consumption; the message says why and what would be right
     */
    public static SpecificConsumption valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<SpecificConsumption> kind() {
        return KIND;
    }
}
