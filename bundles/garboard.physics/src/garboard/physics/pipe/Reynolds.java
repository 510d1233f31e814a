// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.quantity.KinematicViscosity;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Speed;

/** Reynolds number of the flow in a bore, Re = v D / nu. */
public final class Reynolds {

    /** Below this, pipe flow stays laminar. White, Fluid Mechanics, ch. 6. */
    public static final double LAMINAR_BELOW = 2300;

    /** From here on, pipe flow is taken as fully turbulent. White, Fluid Mechanics, ch. 6. */
    public static final double TURBULENT_FROM = 4000;

    private Reynolds() {
    }

    /** State of the flow. */
    public enum Regime {
        LAMINAR, TRANSITIONAL, TURBULENT
    }

    /** @param velocity 0 or more */
    public static Ratio number(Speed velocity, Length bore, KinematicViscosity viscosity) {
        return Ratio.of(Argument.notNegative("velocity", velocity) * Argument.positive("bore", bore) / Argument.positive("viscosity", viscosity));
    }

    public static Regime regime(Ratio reynolds) {
        double re = Argument.notNegative("Reynolds number", reynolds);
        if (re < LAMINAR_BELOW) {
            return Regime.LAMINAR;
        }
        return re < TURBULENT_FROM ? Regime.TRANSITIONAL : Regime.TURBULENT;
    }
}
