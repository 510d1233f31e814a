// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A difference of two pressures, a loss or a head.
 *
 * <p>SI unit: pascal.
 */
public final class PressureDifference extends Quantity<PressureDifference> {

    static final Kind<PressureDifference> KIND = new Kind<>(PressureDifference.class, PressureDifference::new, FlowUnits.PRESSURE_DIFFERENCE);

    private PressureDifference(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the pressure difference of so many SI units (pascal)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static PressureDifference of(double si) {
        return new PressureDifference(si, Given.COMPUTED);
    }

    /**
     * {@return the pressure difference of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of pressure difference
     * @throws IllegalArgumentException when the number is not finite
     */
    public static PressureDifference of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the pressure difference a text tells}
     *
     * @throws QuantityFormatException when the text is no pressure difference; the message says why and what would be right
     */
    public static PressureDifference valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<PressureDifference> kind() {
        return KIND;
    }
}
