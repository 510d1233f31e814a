// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A voltage; rms for alternating current.
 *
 * <p>SI unit: volt.
 */
public final class Voltage extends Quantity<Voltage> {

    static final Kind<Voltage> KIND = new Kind<>(Voltage.class, Voltage::new, ElectricalUnits.VOLTAGE);

    private Voltage(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the voltage of so many SI units (volt)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Voltage of(double si) {
        return new Voltage(si, Given.COMPUTED);
    }

    /**
     * {@return the voltage of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of voltage
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Voltage of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the voltage a text tells}
     *
     * @throws QuantityFormatException when the text is no voltage; the message says why and what would be right
     */
    public static Voltage valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Voltage> kind() {
        return KIND;
    }
}
