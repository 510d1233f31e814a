// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * The resistance of a conductor by its length.
 *
 * <p>SI unit: ohm per metre.
 */
public final class ResistancePerLength extends Quantity<ResistancePerLength> {

    static final Kind<ResistancePerLength> KIND = new Kind<>(ResistancePerLength.class, ResistancePerLength::new, ElectricalUnits.RESISTANCE_PER_LENGTH);

    private ResistancePerLength(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the resistance per length of so many SI units (ohm per metre)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static ResistancePerLength of(double si) {
        return new ResistancePerLength(si, Given.COMPUTED);
    }

    /**
     * {@return the resistance per length of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of resistance per length
     * @throws IllegalArgumentException when the number is not finite
     */
    public static ResistancePerLength of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the resistance per length a text tells}
     *
     * @throws QuantityFormatException when the text is no resistance per length; the message says why and what would be right
     */
    public static ResistancePerLength valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<ResistancePerLength> kind() {
        return KIND;
    }
}
