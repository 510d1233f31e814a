// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import garboard.physics.Argument;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.Slope;

/** Fall of a run of pipe or hose, at rest and when the boat inclines. A slope is fall over horizontal run. Derived here. */
public final class Fall {

    /** Half an inch per foot, 41.7 mm/m, 2.386 degrees. Gerr, Boat Mechanical Systems Handbook. */
    public static final Slope HALF_INCH_PER_FOOT = Slope.of(1.0 / 24);

    private Fall() {
    }

    /** A slope and the attitude in which it occurs. */
    public record FallAt(Slope slope, Attitude attitude) {
    }

    /**
     * Mean slope of a run.
     *
     * @param drop how much lower the far end lies; negative where it rises
     */
    public static Slope slope(Length drop, Run run) {
        return Slope.of(drop.si() / Argument.positive("run", run.horizontal()));
    }

    /** Drop a run needs for a slope. */
    public static Length dropFor(Slope slope, Run run) {
        return Length.of(slope.si() * Argument.positive("run", run.horizontal()));
    }

    /**
     * Slope that is left when the boat inclines against the run: tan(atan(slope) - inclination). Negative: the run drains backwards.
     *
     * @param adverse 0 to less than 45 degrees
     */
    public static Slope left(Slope atRest, Angle adverse) {
        return Slope.of(Math.tan(Math.atan(atRest.si()) - adverse(adverse)));
    }

    /** Slope to build so that {@code wanted} is left when the boat inclines against the run. */
    public static Slope leastAtRest(Slope wanted, Angle adverse) {
        double angle = Math.atan(Argument.notNegative("wanted slope", wanted)) + adverse(adverse);
        Argument.between("wanted slope and inclination together", Angle.of(angle), 0, Math.toRadians(89), "less than 89 deg");
        return Slope.of(Math.tan(angle));
    }

    /** Fall from one point to the next in one attitude, over the horizontal distance in that attitude. */
    public static Slope between(BoatPoint start, BoatPoint end, Attitude attitude) {
        BoatPoint way = start.from(end);
        return slopeOf(way, HeeledHeight.of(way, attitude.withSinkage(Length.of(0))).si());
    }

    /** Least fall from one point to the next anywhere in the envelope, and where; sinkage does not matter to it. */
    public static FallAt least(BoatPoint start, BoatPoint end, AttitudeEnvelope envelope) {
        BoatPoint way = start.from(end);
        HeeledHeight.HeightAt lowest = HeeledHeight.lowest(way, envelope.withSinkage(Length.of(0)));
        return new FallAt(slopeOf(way, lowest.height().si()), lowest.attitude());
    }

    /** A length measured horizontally. */
    public record Run(Length horizontal) {
    }

    private static Slope slopeOf(BoatPoint way, double dropM) {
        double lengthM = Math.hypot(Math.hypot(way.forward().si(), way.toStarboard().si()), way.height().si());
        double horizontalM = Math.sqrt(Math.max(0, lengthM * lengthM - dropM * dropM));
        Argument.positive("horizontal distance of the points", Length.of(horizontalM));
        return Slope.of(dropM / horizontalM);
    }

    private static double adverse(Angle adverse) {
        return Argument.between("adverse inclination", adverse, 0, Math.PI / 4, "0 deg to 45 deg");
    }
}
