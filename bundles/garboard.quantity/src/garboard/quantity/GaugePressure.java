// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A pressure against the surrounding air, negative for a vacuum.
 *
 * <p>SI unit: pascal.
 */
public final class GaugePressure extends Quantity<GaugePressure> {

    static final Kind<GaugePressure> KIND = new Kind<>(GaugePressure.class, GaugePressure::new, FlowUnits.GAUGE_PRESSURE);

    private GaugePressure(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the gauge pressure of so many SI units (pascal)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static GaugePressure of(double si) {
        return new GaugePressure(si, Given.COMPUTED);
    }

    /**
     * {@return the gauge pressure of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of gauge pressure
     * @throws IllegalArgumentException when the number is not finite
     */
    public static GaugePressure of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the gauge pressure a text tells}
     *
     * @throws QuantityFormatException when the text is no gauge pressure; the message says why and what would be right
     */
    public static GaugePressure valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<GaugePressure> kind() {
        return KIND;
    }

    /** {@return this less the other} */
    @Override
    public PressureDifference differenceFrom(GaugePressure other) {
        return PressureDifference.of(si() - other.si());
    }

    /**
     * {@return the same gauge pressure with an accuracy to both sides, in place of an earlier one}
     *
     * @throws QuantityFormatException when the half width is negative
     */
    public GaugePressure withAccuracy(PressureDifference halfWidth) {
        return withHalfWidth(halfWidth);
    }
}
