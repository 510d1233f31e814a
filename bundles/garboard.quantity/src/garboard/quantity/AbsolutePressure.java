// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A pressure above vacuum.
 *
 * <p>SI unit: pascal. Nothing below 0 Pa is one: every way of making it refuses a lower value. A vacuum on a gauge is a
 * negative {@link GaugePressure}.
 */
public final class AbsolutePressure extends Quantity<AbsolutePressure> {

    static final Kind<AbsolutePressure> KIND = new Kind<>(AbsolutePressure.class, AbsolutePressure::new, FlowUnits.ABSOLUTE_PRESSURE);

    private AbsolutePressure(double si, Given given) {
        super(notBelowZero(si), given);
    }

    /**
     * {@return the absolute pressure of so many SI units (pascal)}
     *
     * @throws IllegalArgumentException when the number is not finite or below 0 Pa
     */
    public static AbsolutePressure of(double si) {
        return new AbsolutePressure(si, Given.COMPUTED);
    }

    /**
     * {@return the absolute pressure of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of absolute pressure
     * @throws IllegalArgumentException when the number is not finite or below 0 Pa
     */
    public static AbsolutePressure of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the absolute pressure a text tells}
     *
     * @throws QuantityFormatException when the text is no absolute pressure; the message says why and what would be right
     */
    public static AbsolutePressure valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<AbsolutePressure> kind() {
        return KIND;
    }

    /** {@return this less the other} */
    @Override
    public PressureDifference differenceFrom(AbsolutePressure other) {
        return PressureDifference.of(si() - other.si());
    }

    /**
     * {@return the same absolute pressure with an accuracy to both sides, in place of an earlier one}
     *
     * @throws QuantityFormatException when the half width is negative
     */
    public AbsolutePressure withAccuracy(PressureDifference halfWidth) {
        return withHalfWidth(halfWidth);
    }

    private static double notBelowZero(double si) {
        if (si < 0) {
            throw new ImplausibleQuantityException(si + " Pa lies below a vacuum; "
                + "a pressure read on a gauge is a gauge pressure");
        }
        return si;
    }
}
