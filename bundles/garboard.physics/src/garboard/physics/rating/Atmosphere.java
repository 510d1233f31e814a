// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import garboard.physics.Argument;
import garboard.quantity.AbsolutePressure;
import garboard.quantity.Length;
import garboard.quantity.Temperature;

/** Pressure of the air at a height, and of water vapour at a temperature. */
public final class Atmosphere {

    private Atmosphere() {
    }

    /** Standard pressure at a height ({@link RatingSources#STANDARD_ATMOSPHERE}). Valid from -500 to 11 000 m; throws outside. */
    public static AbsolutePressure standardPressure(Length height) {
        double heightM = Argument.between("height above the sea", height, -500, 11_000, "-500 to 11 000 m");
        return AbsolutePressure.of(101_325 * Math.pow(1 - 0.0065 * heightM / 288.15, 5.25588));
    }

    /**
     * Height at which the standard atmosphere has a pressure, the inverse of {@link #standardPressure}. Weather moves the barometer by some kPa,
     * which is some hundred metres. Valid from 22.7 to 107.4 kPa; throws outside.
     */
    public static Length standardHeight(AbsolutePressure barometer) {
        double pressurePa = Argument.between("barometric pressure", barometer, 22_700, 107_400, "22.7 to 107.4 kPa");
        return Length.of(288.15 / 0.0065 * (1 - Math.pow(pressurePa / 101_325, 1 / 5.25588)));
    }

    /** Saturation pressure over water ({@link RatingSources#SATURATION}). Valid from -45 to 60 degC; throws outside. */
    public static AbsolutePressure saturationPressure(Temperature air) {
        double celsius = Argument.between("air temperature", air, 228.15, 333.15, "-45 to 60 degC") - 273.15;
        return AbsolutePressure.of(611.2 * Math.exp(17.62 * celsius / (243.12 + celsius)));
    }
}
