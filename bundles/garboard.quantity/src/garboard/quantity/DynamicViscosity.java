// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A dynamic viscosity.
 *
 * <p>SI unit: pascal second.
 */
public final class DynamicViscosity extends Quantity<DynamicViscosity> {

    static final Kind<DynamicViscosity> KIND = new Kind<>(DynamicViscosity.class, DynamicViscosity::new, MechanicsUnits.DYNAMIC_VISCOSITY);

    private DynamicViscosity(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the dynamic viscosity of so many SI units (pascal second)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static DynamicViscosity of(double si) {
        return new DynamicViscosity(si, Given.COMPUTED);
    }

    /**
     * {@return the dynamic viscosity of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of dynamic viscosity
     * @throws IllegalArgumentException when the number is not finite
     */
    public static DynamicViscosity of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the dynamic viscosity a text tells}
     *
     * @throws QuantityFormatException when the text is no dynamic viscosity; the message says why and what would be right
     */
    public static DynamicViscosity valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<DynamicViscosity> kind() {
        return KIND;
    }
}
