// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.physics.reference.Interpolation;
import garboard.quantity.Density;
import garboard.quantity.KinematicViscosity;
import garboard.quantity.SpecificHeat;
import garboard.quantity.Temperature;

/** Air and exhaust gas at 1 atm: ideal gas and Sutherland's law for viscosity. For -50 to 900 degC; outside it throws. */
public final class AirLikeGas {

    /** 1 atm over the gas constant of air, 101325 Pa / 287.8 J/(kg.K), as used with exhaust formulas: S = 352.05 / T. From memory. */
    private static final double DENSITY_TIMES_KELVIN = 352.05;

    /** Sutherland's law for air, US Standard Atmosphere 1976, eq. 51: mu = beta T^1.5 / (T + S). From memory. */
    private static final double SUTHERLAND_BETA = 1.458e-6;
    private static final double SUTHERLAND_KELVIN = 110.4;

    /** Usual figures for exhaust gas, kJ/(kg.K) over degC; derived here from the composition, flat below and straight on above. */
    private static final Interpolation EXHAUST_SPECIFIC_HEAT =
        new Interpolation(new double[] {20, 60, 450, 600, 800}, new double[] {1.05, 1.05, 1.10, 1.14, 1.19});

    private AirLikeGas() {
    }

    /** Density 352.05 / T. */
    public static Density density(Temperature temperature) {
        return Density.of(DENSITY_TIMES_KELVIN / kelvin(temperature));
    }

    /** Density and kinematic viscosity. */
    public static Fluid at(Temperature temperature) {
        double kelvin = kelvin(temperature);
        double viscosityPaS = SUTHERLAND_BETA * Math.pow(kelvin, 1.5) / (kelvin + SUTHERLAND_KELVIN);
        return new Fluid(density(temperature), KinematicViscosity.of(viscosityPaS / density(temperature).si()));
    }

    /** Specific heat of exhaust gas at constant pressure, 20 to 800 degC. */
    public static SpecificHeat exhaustSpecificHeat(Temperature temperature) {
        double kelvin = Argument.between("temperature", temperature, 293.15, 1073.15, "20 degC to 800 degC");
        return SpecificHeat.of(EXHAUST_SPECIFIC_HEAT.at(kelvin - 273.15), "kJ/(kg.K)");
    }

    private static double kelvin(Temperature temperature) {
        return Argument.between("temperature", temperature, 223.15, 1173.15, "-50 degC to 900 degC");
    }
}
