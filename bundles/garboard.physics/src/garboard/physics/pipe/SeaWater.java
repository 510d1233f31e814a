// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.quantity.Density;
import garboard.quantity.KinematicViscosity;
import garboard.quantity.SpecificHeat;
import garboard.quantity.Temperature;

/**
 * Sea water of 35 g/kg at atmospheric pressure: the correlations that Sharqawy, Lienhard and Zubair collected (Desalination and Water Treatment
 * 16, 2010: density eq. 8, specific heat eq. 9, viscosity eqs. 22 and 23), as quoted in published program libraries. Good to 0.1 % in density,
 * 0.3 % in specific heat, 1.5 % in viscosity. Used here for 0 to 40 degC, the sea; outside it throws.
 */
public final class SeaWater {

    /** kg of salt per kg. */
    private static final double SALINITY = 0.035;

    /** Customary round figure for hydrostatics. Common practice. */
    public static final Density CUSTOMARY_DENSITY = Density.of(1025);

    private SeaWater() {
    }

    /** Density and kinematic viscosity, 0 to 40 degC. */
    public static Fluid at(Temperature temperature) {
        double celsius = celsius(temperature);
        double densityKgM3 = densityKgM3(celsius);
        return new Fluid(Density.of(densityKgM3), KinematicViscosity.of(viscosityPaS(celsius) / densityKgM3));
    }

    /** Specific heat at constant pressure, 0 to 40 degC. */
    public static SpecificHeat specificHeat(Temperature temperature) {
        double kelvin = celsius(temperature) + 273.15;
        double s = SALINITY * 1000;
        double a = 5.328 - 9.76e-2 * s + 4.04e-4 * s * s;
        double b = -6.913e-3 + 7.351e-4 * s - 3.15e-6 * s * s;
        double c = 9.6e-6 - 1.927e-6 * s + 8.23e-9 * s * s;
        double d = 2.5e-9 + 1.666e-9 * s - 7.125e-12 * s * s;
        return SpecificHeat.of(1000 * (a + kelvin * (b + kelvin * (c + kelvin * d))));
    }

    private static double densityKgM3(double t) {
        double fresh = 999.9 + t * (2.034e-2 + t * (-6.162e-3 + t * (2.261e-5 - t * 4.657e-8)));
        double salt = SALINITY * (802.0 + t * (-2.001 + t * (1.677e-2 - t * 3.060e-5))) - 1.613e-5 * SALINITY * SALINITY * t * t;
        return fresh + salt;
    }

    private static double viscosityPaS(double t) {
        double fresh = 4.2844e-5 + 1 / (0.157 * (t + 64.993) * (t + 64.993) - 91.296);
        double a = 1.541 + 1.998e-2 * t - 9.52e-5 * t * t;
        double b = 7.974 - 7.561e-2 * t + 4.724e-4 * t * t;
        return fresh * (1 + a * SALINITY + b * SALINITY * SALINITY);
    }

    private static double celsius(Temperature temperature) {
        return Argument.between("temperature", temperature, 273.15, 313.15, "0 degC to 40 degC") - 273.15;
    }
}
