// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/**
 * Height of a point of the boat above the water when the boat heels and trims. Exact rotation of the boat's axes: trim first, then heel
 * about the boat's own long axis. With x forward, y to starboard, z up, heel phi, trim theta and sinkage d:
 * <pre>h = x sin(theta) - y sin(phi) cos(theta) + z cos(phi) cos(theta) - d</pre>
 * Derived here; holds for every heel and trim below 90 degrees. What the hull does to the water plane is in d: 0 for a wall-sided hull at
 * small angles.
 */
public final class HeeledHeight {

    private HeeledHeight() {
    }

    /** A height and the attitude in which it occurs. */
    public record HeightAt(Length height, Attitude attitude) {
    }

    /** Height of the point above the water in this attitude; negative is under water. */
    public static Length of(BoatPoint point, Attitude attitude) {
        return Length.of(heightM(point, attitude.heel().si(), attitude.trim().si()) - attitude.sinkage().si());
    }

    /**
     * Lowest height the point comes down to anywhere in the envelope, sinkage counted. For a point above water that is at the greatest heel
     * towards its own side; a point under water may be lowest at a smaller heel, tan(phi) = |y|/|z|, which is looked at too.
     */
    public static HeightAt lowest(BoatPoint point, AttitudeEnvelope envelope) {
        return extreme(point, envelope, 1, envelope.sinkage().si());
    }

    /** Greatest height the point rises to anywhere in the envelope, lift counted: what an intake must not do above the surface. */
    public static HeightAt highest(BoatPoint point, AttitudeEnvelope envelope) {
        return extreme(point, envelope, -1, -envelope.lift().si());
    }

    /** What the point loses against its height at rest: upright height less {@link #lowest}. */
    public static Length loss(BoatPoint point, AttitudeEnvelope envelope) {
        return Length.of(point.height().si() - lowest(point, envelope).height().si());
    }

    /**
     * Height against heel, from the greatest heel to port to the greatest to starboard in equal steps.
     *
     * @param attitude trim and sinkage to keep; its heel counts for nothing
     * @param greatestHeel more than 0, less than 90 degrees
     * @param steps 2 or more; one more point than steps
     */
    public static List<HeightAt> curve(BoatPoint point, Attitude attitude, Angle greatestHeel, int steps) {
        Argument.positive("greatest heel", greatestHeel);
        Attitude.belowRightAngle("greatest heel", greatestHeel);
        if (steps < 2) {
            throw OutOfRangeException.of("steps", steps, "2 or more");
        }
        return IntStream.rangeClosed(0, steps)
            .mapToObj(step -> attitude.withHeel(Angle.of(greatestHeel.si() * (2.0 * step / steps - 1))))
            .map(at -> new HeightAt(of(point, at), at)).toList();
    }

    private static HeightAt extreme(BoatPoint point, AttitudeEnvelope envelope, int sign, double riseM) {
        double x = point.forward().si();
        double y = point.toStarboard().si();
        double z = point.height().si();
        // cos(trim) is positive, so heel and trim can be sought one after the other.
        double heel = best(candidates(envelope.heel().si(), Math.atan2(-y, z)), sign, phi -> z * Math.cos(phi) - y * Math.sin(phi));
        double athwart = z * Math.cos(heel) - y * Math.sin(heel);
        double trim = best(candidates(envelope.trim().si(), Math.atan2(x, athwart)), sign,
            theta -> x * Math.sin(theta) + athwart * Math.cos(theta));
        Attitude attitude = new Attitude(Angle.of(heel), Angle.of(trim), Length.of(riseM));
        return new HeightAt(of(point, attitude), attitude);
    }

    /** No turn, both ends, and the two turning points of a sinusoid whose crest is at {@code crest}, as far as they lie in the range. */
    private static List<Double> candidates(double greatest, double crest) {
        List<Double> angles = new ArrayList<>(List.of(0.0, greatest, -greatest));
        DoubleStream.of(crest, crest - Math.PI, crest + Math.PI).filter(angle -> Math.abs(angle) < greatest).forEach(angles::add);
        return angles;
    }

    private static double best(List<Double> angles, int sign, DoubleUnaryOperator height) {
        double found = angles.get(0);
        for (double angle : angles) {
            // A rounding error is no reason to leave the upright position.
            if (sign * (height.applyAsDouble(found) - height.applyAsDouble(angle)) > 1e-12) {
                found = angle;
            }
        }
        return found;
    }

    private static double heightM(BoatPoint point, double heel, double trim) {
        return point.forward().si() * Math.sin(trim) - point.toStarboard().si() * Math.sin(heel) * Math.cos(trim)
            + point.height().si() * Math.cos(heel) * Math.cos(trim);
    }
}
