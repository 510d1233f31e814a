// SPDX-License-Identifier: EPL-2.0
package garboard.physics.air;

import garboard.physics.Argument;
import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/**
 * Ventilation of small passenger vessels, 46 CFR subchapter T. The rule prints inch and metric figures that do not quite agree; both are here,
 * and which one is meant has to be said.
 */
public final class Ventilation46Cfr182 {

    private Ventilation46Cfr182() {
    }

    /** The two columns of figures in the rule. */
    public enum Figures {
        /** Volumes of 500, 1000 and 1500 ft3; 2000 ft/min; 1 in2 for each foot of beam. */
        INCH(new double[] {500, 1000, 1500}, "ft3", 2000 * 0.3048 / 60, 645.16 / 0.3048),

        /** Volumes of 14, 28.50 and 43 m3; 10 m/s; 650 mm2 for each 300 mm of beam. */
        METRIC(new double[] {14, 28.50, 43}, "m3", 10, 650 / 0.300);

        private final double[] edges;
        private final String unit;
        private final double ductVelocityMPerS;
        private final double ductMm2PerM;

        Figures(double[] edges, String unit, double ductVelocityMPerS, double ductMm2PerM) {
            this.edges = edges;
            this.unit = unit;
            this.ductVelocityMPerS = ductVelocityMPerS;
            this.ductMm2PerM = ductMm2PerM;
        }
    }

    /** Least rate at which air is changed in a space with gasoline machinery or tanks: once in 2, 3, 4 or 5 min. 46 CFR 182.460(b). */
    public static TimeSpan timePerAirChange(Volume space, Figures figures) {
        Argument.positive("volume", space);
        double volume = space.in(figures.unit);
        int minutes = 2;
        for (double edge : figures.edges) {
            minutes += volume > edge * (1 + 1e-9) ? 1 : 0;
        }
        return TimeSpan.of(minutes, "min");
    }

    /** Least flow of the exhaust ventilation. It drops at each edge of the table; that is how the rule reads. 46 CFR 182.460(b). */
    public static VolumeFlow leastFlow(Volume space, Figures figures) {
        return VolumeFlow.of(space.si() / timePerAirChange(space, figures).si());
    }

    /** Least free area of exhaust ducts: 2000 ft/min or 10 m/s at most. 46 CFR 182.460(f), from memory; 72.15-10(e) reads alike. */
    public static Area leastDuctArea(VolumeFlow flow, Figures figures) {
        return Area.of(Argument.notNegative("flow", flow) / figures.ductVelocityMPerS);
    }

    /** Whether a rectangular duct is square enough: no side more than twice the other. 46 CFR 182.460(f), from memory. */
    public static boolean ductSidesPass(Length side, Length other) {
        double longer = Math.max(Argument.positive("side", side), Argument.positive("other side", other));
        return longer <= 2 * Math.min(side.si(), other.si()) * (1 + 1e-12);
    }

    /** Time to blow before the start: one change of air. 46 CFR 185.352. */
    public static TimeSpan blowBeforeStart(Volume space, VolumeFlow flow) {
        return TimeSpan.of(Argument.positive("volume", space) / Argument.positive("flow", flow));
    }

    /** Least area of all inlet ducts, and again of all outlet ducts, of a diesel machinery space. 46 CFR 182.465, from memory. */
    public static Area leastDieselDuctArea(Length beam, Figures figures) {
        return Area.of(figures.ductMm2PerM * Argument.positive("beam", beam), "mm2");
    }

    /** Least free area of a cowl or scoop on a duct: twice the duct. 46 CFR 182.465, from memory. */
    public static Area leastCowl(Area duct) {
        return Area.of(2 * Argument.positive("duct area", duct));
    }

    /** Least bore of the gooseneck vent of a diesel tank space without machinery: 65 mm from 14 m3 on, else 40 mm. 46 CFR 182.470. */
    public static Length tankSpaceVent(Volume space) {
        return Argument.positive("volume", space) >= 14 * (1 - 1e-9) ? Length.of(65, "mm") : Length.of(40, "mm");
    }
}
