// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.quantity.Force;
import garboard.quantity.Mass;

/** Pull that a battery has to withstand in its place. */
public final class BatteryRestraint {

    private static final double STANDARD_GRAVITY_M_PER_S2 = 9.80665;
    private static final double POUND_FORCE_N = 4.4482216152605;

    private BatteryRestraint() {
    }

    /**
     * 90 lbf (400 N) or twice the weight, whichever is less, for one minute in each direction; the battery moves at most 1.0 in (25 mm)
     * ({@link BatterySources#RESTRAINT_33_CFR}).
     */
    public static Force pull33Cfr183(Mass battery) {
        return Force.of(Math.min(90 * POUND_FORCE_N, twiceWeight(battery)));
    }

    /** Twice the weight; the battery moves at most 10 mm ({@link BatterySources#RESTRAINT_ISO}). */
    public static Force pullIso(Mass battery) {
        return Force.of(twiceWeight(battery));
    }

    private static double twiceWeight(Mass battery) {
        return 2 * Argument.positive("battery mass", battery) * STANDARD_GRAVITY_M_PER_S2;
    }
}
