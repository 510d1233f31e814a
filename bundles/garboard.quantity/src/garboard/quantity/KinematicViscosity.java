// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

/**
 * A kinematic viscosity.
 *
 * <p>SI unit: square metre per second.
 */
public final class KinematicViscosity extends Quantity<KinematicViscosity> {

    static final Kind<KinematicViscosity> KIND = new Kind<>(KinematicViscosity.class, KinematicViscosity::new, MechanicsUnits.KINEMATIC_VISCOSITY);

    private KinematicViscosity(double si, Given given) {
        super(si, given);
    }

    /**
     * {@return the kinematic viscosity of so many SI units (square metre per second)}
     *
     * @throws IllegalArgumentException when the number is not finite
     */
    public static KinematicViscosity of(double si) {
        return new KinematicViscosity(si, Given.COMPUTED);
    }

    /**
     * {@return the kinematic viscosity of a number in a unit}
     *
     * @throws QuantityFormatException  when the text is no unit of kinematic viscosity
     * @throws IllegalArgumentException when the number is not finite
     */
    public static KinematicViscosity of(double number, String unit) {
        return KIND.of(number, unit);
    }

    /**
     * {@return the kinematic viscosity a text tells}
     *
     * @throws QuantityFormatException when the text is no kinematic viscosity; the message says why and what would be right
     */
    public static KinematicViscosity valueOf(String text) {
        return KIND.parse(text);
    }

    @Override
    public Kind<KinematicViscosity> kind() {
        return KIND;
    }
}
