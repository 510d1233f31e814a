// SPDX-License-Identifier: EPL-2.0
package garboard.physics.fuel;

import garboard.physics.Argument;
import garboard.physics.pipe.Hydrostatics;
import garboard.quantity.Density;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** Figures of 33 CFR 183 subpart J, fuel systems of boats with gasoline engines. Law there; good practice elsewhere. */
public final class FuelSystem33Cfr183 {

    /** Most that a severed hose may let run in {@link #SEVERED_HOSE_TIME} for hose of the lower class: 33 CFR 183.558(b), 5 oz, read as fluid. */
    public static final Volume SEVERED_HOSE_LIMIT = Volume.of(5, "fl oz");

    /** 33 CFR 183.558(b). */
    public static final TimeSpan SEVERED_HOSE_TIME = TimeSpan.of(2.5, "min");

    /** Flow of the overflow test of fill systems: 33 CFR 183.564. */
    public static final VolumeFlow FILL_OVERFLOW = VolumeFlow.of(5, "gal/min");

    /** Time the overflow must at least be kept out: 33 CFR 183.564. */
    public static final TimeSpan FILL_OVERFLOW_TIME = TimeSpan.of(5);

    /** Line length from which a second shut-off at the engine is asked for: 33 CFR 183.568(c), more than 12 ft. */
    public static final Length SECOND_SHUT_OFF_BEYOND = Length.of(12, "ft");

    private static final double LEAST_TEST_PA = GaugePressure.of(3, "psi").si();

    private FuelSystem33Cfr183() {
    }

    /**
     * Pressure of the leak test: the greater of 3 psi and one and a half times the static head at the lowest point. 33 CFR 183.542.
     *
     * @param head from the overflow down to the lowest point, 0 or more
     */
    public static GaugePressure leakTest(Density fuel, Length head) {
        Argument.notNegative("head", head);
        return GaugePressure.of(Math.max(LEAST_TEST_PA, 1.5 * Hydrostatics.pressure(fuel, head).si()));
    }

    /** Greatest head for which the 3 psi of {@link #leakTest} are enough. */
    public static Length headOfLeastTest(Density fuel) {
        return Length.of(LEAST_TEST_PA / (1.5 * Argument.positive("fuel density", fuel) * Hydrostatics.GRAVITY));
    }

    /** Volume that overflows in the fill test: 5 gal/min for 5 s, 33 CFR 183.564. */
    public static Volume fillOverflowVolume() {
        return Volume.of(FILL_OVERFLOW.si() * FILL_OVERFLOW_TIME.si());
    }

    /** Rate of a severed hose at the limit: 5 fl oz in 2.5 min. */
    public static VolumeFlow severedHoseRate() {
        return VolumeFlow.of(SEVERED_HOSE_LIMIT.si() / SEVERED_HOSE_TIME.si());
    }

    /** Whether a spill in a time keeps to the severed-hose limit; a longer or shorter time is taken in proportion. */
    public static boolean severedHosePasses(Volume spilled, TimeSpan time) {
        double rate = Argument.notNegative("spilled volume", spilled) / Argument.positive("time", time);
        return rate <= severedHoseRate().si() * (1 + 1e-12);
    }

    /** Greatest pressure in a tank while filling: 80 % of the one on its label. 33 CFR 183.520. */
    public static GaugePressure greatestFillingPressure(GaugePressure label) {
        return GaugePressure.of(0.80 * Argument.positive("label pressure", label));
    }

    /**
     * Most by which a hose's bore may exceed the minor outside diameter of its fitting: 33 CFR 183.558(d), Table 8 (from memory).
     *
     * @param minorDiameter minor outside diameter of the fitting, more than 0
     */
    public static Length greatestHoseClearance(Length minorDiameter) {
        double inches = Length.of(Argument.positive("minor diameter", minorDiameter)).in("in");
        if (inches < 3.0 / 8 - 1e-9) {
            return Length.of(0.020, "in");
        }
        return inches <= 1 + 1e-9 ? Length.of(0.035, "in") : Length.of(0.065, "in");
    }

    /**
     * Time to hold the leak test: 5 min, and 1 min for each started 10 gal above 50 gal of tank. Laboratory procedure issued with the standard,
     * quoted; 33 CFR 183.542 itself sets no time.
     */
    public static TimeSpan leakTestHold(Volume tank) {
        double gallonsAbove = Volume.of(Argument.positive("tank", tank)).in("gal") - 50;
        return TimeSpan.of(5 + Math.max(0, Math.ceil(gallonsAbove / 10 - 1e-9)), "min");
    }
}
