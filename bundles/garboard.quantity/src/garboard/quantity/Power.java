// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A power, mechanical, thermal or (as active power) electrical.
 *
 * <p>SI unit: watt. {@code hp} is the mechanical horsepower of 550 ft.lbf/s, {@code PS} the metric one.
 */
public final class Power extends Quantity<Power> {

    static final Kind<Power> KIND = new Kind<>(Power.class, Power::new, HeatUnits.POWER);

    private Power(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the power of so many SI units (watt)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Power of(double si) {
        return new Power(si, Given.COMPUTED);
    }

    /**
     * {@return the power of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of power
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Power of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the power a text tells}
     *
     * @throws QuantityFormatException when the text is no power; the message says why and what would be right
     */
    public static Power valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Power> kind() {
        return KIND;
    }
}
