// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;

/** Pressure of a column of liquid, rho g h with g = 9.80665 m/s2. */
public final class Hydrostatics {

    /** Standard gravity, m/s2 (ISO 80000-3). */
    public static final double GRAVITY = 9.80665;

    private Hydrostatics() {
    }

    /** Pressure at the foot of a column against its top; negative for a negative height. */
    public static PressureDifference pressure(Density density, Length height) {
        return PressureDifference.of(Argument.positive("density", density) * GRAVITY * height.si());
    }

    /** Height of the column that makes a pressure. */
    public static Length height(Density density, PressureDifference pressure) {
        return Length.of(pressure.si() / (Argument.positive("density", density) * GRAVITY));
    }
}
