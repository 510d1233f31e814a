// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A mass flow.
 *
 * <p>SI unit: kilogram per second.
 */
public final class MassFlow extends Quantity<MassFlow> {

    static final Kind<MassFlow> KIND = new Kind<>(MassFlow.class, MassFlow::new, FlowUnits.MASS_FLOW);

    private MassFlow(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the mass flow of so many SI units (kilogram per second)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static MassFlow of(double si) {
        return new MassFlow(si, Given.COMPUTED);
    }

    /**
     * {@return the mass flow of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of mass flow
     * @throws IllegalArgumentException when the number is not finite
     */
    public static MassFlow of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the mass flow a text tells}
     *
     * @throws QuantityFormatException when the text is no mass flow; the message says why and what would be right
     */
    public static MassFlow valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<MassFlow> kind() {
        return KIND;
    }
}
