// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A span of time, not a point in time.
 *
 * <p>SI unit: second.
 */
public final class TimeSpan extends Quantity<TimeSpan> {

    static final Kind<TimeSpan> KIND = new Kind<>(TimeSpan.class, TimeSpan::new, MechanicsUnits.TIME_SPAN);

    private TimeSpan(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the time span of so many SI units (second)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static TimeSpan of(double si) {
        return new TimeSpan(si, Given.COMPUTED);
    }

    /**
     * {@return the time span of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of time span
     * @throws IllegalArgumentException when the number is not finite
     */
    public static TimeSpan of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the time span a text tells}
     *
     * @throws QuantityFormatException when the text is no time span; the message says why and what would be right
     */
    public static TimeSpan valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<TimeSpan> kind() {
        return KIND;
    }
}
