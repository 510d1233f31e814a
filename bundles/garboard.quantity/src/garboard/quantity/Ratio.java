// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A ratio: a power factor, an efficiency, a share.
 *
 * <p>SI unit: 1. A number alone is read as a pure number. An accuracy in {@code %} is per cent of the reading, not
 * percentage points: write {@code 80 % ±0.02 1} for those.
 */
public final class Ratio extends Quantity<Ratio> {

    static final Kind<Ratio> KIND = new Kind<>(Ratio.class, Ratio::new, HeatUnits.RATIO);

    private Ratio(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the ratio of so many SI units (1)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Ratio of(double si) {
        return new Ratio(si, Given.COMPUTED);
    }

    /**
     * {@return the ratio of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of ratio
     * @throws IllegalArgumentException when the number is not finite
     */
    public static Ratio of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the ratio a text tells}
     *
     * @throws QuantityFormatException when the text is no ratio; the message says why and what would be right
     */
    public static Ratio valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<Ratio> kind() {
        return KIND;
    }
}
