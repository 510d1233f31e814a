// SPDX-License-Identifier: EPL-2.0
package garboard.physics.rating;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;

/**
 * Power adjustment to site conditions: a = k - 0.7 (1 - k) (1/eta - 1), k = ((px - A vx)/(pr - A vr))^m (Tr/Tx)^n (Tcr/Tcx)^s
 * ({@link RatingSources#ISO_3046}: exponents unverified, say so in print). Reference: 100 kPa, 25 degC, 30 %, coolant 25 degC.
 */
public final class Iso3046Derating {

    /** What the standard takes where the mechanical efficiency is unknown. */
    public static final Ratio USUAL_MECHANICAL_EFFICIENCY = Ratio.of(0.8);

    private static final double REFERENCE_K = 298.15;

    private Iso3046Derating() {
    }

    /** Factors for a site; throws where so little power is left that the formula no longer means anything (a below 0.3). */
    public static Factors factors(EngineKind engine, SiteConditions site, Ratio mechanicalEfficiency) {
        double efficiency = Argument.between("mechanical efficiency", mechanicalEfficiency, 0.5, 1, "50 to 100 %");
        double k = Math.pow(dryPressure(engine, site) / dryPressure(engine, SiteConditions.reference()), engine.pressureExponent)
                * Math.pow(REFERENCE_K / site.air().si(), engine.airTemperatureExponent)
                * Math.pow(REFERENCE_K / site.chargeCoolant().si(), engine.coolantTemperatureExponent);
        double power = k - 0.7 * (1 - k) * (1 / efficiency - 1);
        if (power < 0.3) {
            throw OutOfRangeException.of("site conditions", site, "such that at least 30 % of the power is left");
        }
        return new Factors(Ratio.of(k), Ratio.of(power), Ratio.of(k / power));
    }

    private static double dryPressure(EngineKind engine, SiteConditions at) {
        return at.barometer().si() - engine.humidityFactor * at.vapourPa();
    }

    /**
     * Factors on the values at reference conditions.
     *
     * @param indicatedPower k
     * @param brakePower a; above 1 in cold or dense air, where the rating is still not to be passed
     * @param fuelConsumption b = k / a
     */
    public record Factors(Ratio indicatedPower, Ratio brakePower, Ratio fuelConsumption) {
    }
}
