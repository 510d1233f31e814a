// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import garboard.physics.Argument;
import garboard.quantity.AbsolutePressure;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

/**
 * What the engine breathes and is cooled by.
 *
 * @param barometer 50 to 110 kPa
 * @param air temperature at the intake, -45 to 60 degC
 * @param humidity relative humidity, 0 to 100 %
 * @param chargeCoolant temperature of the water that cools the charge air, 0 to 60 degC; matters only to engines that have it
 */
public record SiteConditions(AbsolutePressure barometer, Temperature air, Ratio humidity, Temperature chargeCoolant) {

    public SiteConditions {
        Argument.between("barometric pressure", barometer, 50e3, 110e3, "50 to 110 kPa");
        Argument.between("air temperature", air, 228.15, 333.15, "-45 to 60 degC");
        Argument.between("relative humidity", humidity, 0, 1, "0 to 100 %");
        Argument.between("charge coolant temperature", chargeCoolant, 273.15, 333.15, "0 to 60 degC");
    }

    /** Standard reference conditions: 100 kPa, 25 degC, 30 %, coolant 25 degC. */
    public static SiteConditions reference() {
        return new SiteConditions(AbsolutePressure.of(100e3), Temperature.of(298.15), Ratio.of(0.30), Temperature.of(298.15));
    }

    public SiteConditions withBarometer(AbsolutePressure pressure) {
        return new SiteConditions(pressure, air, humidity, chargeCoolant);
    }

    public SiteConditions withAir(Temperature intake) {
        return new SiteConditions(barometer, intake, humidity, chargeCoolant);
    }

    public SiteConditions withHumidity(Ratio relative) {
        return new SiteConditions(barometer, air, relative, chargeCoolant);
    }

    public SiteConditions withChargeCoolant(Temperature coolant) {
        return new SiteConditions(barometer, air, humidity, coolant);
    }

    /** Partial pressure of the water vapour in pascal. */
    double vapourPa() {
        return humidity.si() * Atmosphere.saturationPressure(air).si();
    }
}
