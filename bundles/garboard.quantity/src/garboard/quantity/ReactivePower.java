// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A reactive power.
 *
 * <p>SI unit: var.
 */
public final class ReactivePower extends Quantity<ReactivePower> {

    static final Kind<ReactivePower> KIND = new Kind<>(ReactivePower.class, ReactivePower::new, ElectricalUnits.REACTIVE_POWER);

    private ReactivePower(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the reactive power of so many SI units (var)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static ReactivePower of(double si) {
        return new ReactivePower(si, Given.COMPUTED);
    }

    /**
     * {@return the reactive power of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of reactive power
     * @throws IllegalArgumentException when the number is not finite
     */
    public static ReactivePower of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the reactive power a text tells}
     *
     * @throws QuantityFormatException when the text is no reactive power; the message says why and what would be right
     */
    public static ReactivePower valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<ReactivePower> kind() {
        return KIND;
    }
}
