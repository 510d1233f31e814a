// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * An apparent power.
 *
 * <p>SI unit: volt ampere.
 */
public final class ApparentPower extends Quantity<ApparentPower> {

    static final Kind<ApparentPower> KIND = new Kind<>(ApparentPower.class, ApparentPower::new, ElectricalUnits.APPARENT_POWER);

    private ApparentPower(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the apparent power of so many SI units (volt ampere)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static ApparentPower of(double si) {
        return new ApparentPower(si, Given.COMPUTED);
    }

    /**
     * {@return the apparent power of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of apparent power
     * @throws IllegalArgumentException when the number is not finite
     */
    public static ApparentPower of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the apparent power a text tells}
     *
     * @throws QuantityFormatException when the text is no apparent power; the message says why and what would be right
     */
    public static ApparentPower valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<ApparentPower> kind() {
        return KIND;
    }
}
