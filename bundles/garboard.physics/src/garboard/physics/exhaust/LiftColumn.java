// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import garboard.physics.Argument;
import garboard.physics.pipe.Hydrostatics;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;

/**
 * Pressure to lift the exhaust water: rho g H times the hold-up, the part of the riser that is water. 0 is a riser blown empty, 1 a solid
 * column, which is what counts on paper; only a measurement settles it. Derived here.
 */
public final class LiftColumn {

    private LiftColumn() {
    }

    /**
     * @param lift from the bottom of the canister to the highest point, 0 or more
     * @param holdUp 0 to 1
     */
    public static PressureDifference pressure(Length lift, Ratio holdUp, Density water) {
        Argument.notNegative("lift", lift);
        return PressureDifference.of(Hydrostatics.pressure(water, lift).si() * Argument.between("hold-up", holdUp, 0, 1, "0 to 1"));
    }

    /** Greatest lift that an available pressure raises. @param holdUp more than 0, to 1 */
    public static Length greatestLift(PressureDifference available, Ratio holdUp, Density water) {
        Argument.positive("hold-up", holdUp);
        double share = Argument.between("hold-up", holdUp, 0, 1, "more than 0, to 1");
        return Length.of(Hydrostatics.height(water, available).si() / share);
    }
}
