// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import garboard.physics.Argument;
import garboard.physics.fuel.Combustion;
import garboard.quantity.Density;
import garboard.quantity.Power;
import garboard.quantity.VolumeFlow;

/** Air that an engine breathes. */
public final class CombustionAir {

    private CombustionAir() {
    }

    /** From fuel and air-fuel ratio: P BSFC AFR / rho. Derived here. */
    public static VolumeFlow of(Combustion engine, Density air) {
        return VolumeFlow.of(engine.airFlow().si() / Argument.positive("air density", air));
    }

    /** Rule of thumb: 2.5 ft3/min for each horsepower. Trade practice, quoted. */
    public static VolumeFlow byHorsepower(Power shaft) {
        return VolumeFlow.of(2.5 * horsepower(shaft), "ft3/min");
    }

    /** Rule of thumb: 170 m3/h for 40 horsepower. Marine Diesel Basics 1. */
    public static VolumeFlow byMarineDieselBasics(Power shaft) {
        return VolumeFlow.of(170.0 / 40 * horsepower(shaft), "m3/h");
    }

    private static double horsepower(Power shaft) {
        return Power.of(Argument.positive("shaft power", shaft)).in("hp");
    }
}
