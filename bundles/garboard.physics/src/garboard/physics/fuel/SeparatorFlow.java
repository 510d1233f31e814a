// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import garboard.physics.Argument;
import garboard.quantity.Power;
import garboard.quantity.VolumeFlow;

/**
 * Flow that a fuel-water separator has to be rated for where the pump's flow is not known: what the pump moves, not what the engine burns.
 * Filter trade council's printed answers, retrieved; Gerr, Boat Mechanical Systems Handbook (hp / 600 gal/min) agrees.
 */
public enum SeparatorFlow {

    /** 0.18 US gal/h for each horsepower (0.914 L/h per kW), burn and return. */
    DIESEL(0.18),

    /** 0.10 US gal/h for each horsepower (0.508 L/h per kW), carburettor or no return. With return: the pump's data. */
    GASOLINE_WITHOUT_RETURN(0.10);

    private final double gallonsPerHourAndHorsepower;

    SeparatorFlow(double gallonsPerHourAndHorsepower) {
        this.gallonsPerHourAndHorsepower = gallonsPerHourAndHorsepower;
    }

    /** Least rated flow for an engine. */
    public VolumeFlow least(Power shaft) {
        return VolumeFlow.of(gallonsPerHourAndHorsepower * horsepower(shaft), "gal/h");
    }

    /** Diesel by Gerr's form: hp / 600 US gal/min. */
    public static VolumeFlow dieselByGerr(Power shaft) {
        return VolumeFlow.of(horsepower(shaft) / 600, "gal/min");
    }

    private static double horsepower(Power shaft) {
        return Power.of(Argument.positive("shaft power", shaft)).in("hp");
    }
}
