// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import java.util.Optional;

import garboard.physics.Argument;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/**
 * Where to put a point so that it keeps a margin in every attitude of an envelope: the formulas of {@link HeeledHeight} solved for the place.
 * Derived here.
 */
public final class PlaceToBuild {

    private PlaceToBuild() {
    }

    /**
     * Least height above the loaded waterline for which the lowest height in the envelope is the margin:
     * <pre>z = (m + d + |y| sin(phi) cos(theta) + |x| sin(theta)) / (cos(phi) cos(theta))</pre>
     *
     * @param point its height counts for nothing
     * @param margin 0 or more
     */
    public static Length leastHeight(BoatPoint point, AttitudeEnvelope envelope, Length margin) {
        return Length.of(distanceM(point, envelope, Argument.notNegative("margin", margin) + envelope.sinkage().si()));
    }

    /**
     * Greatest height (negative: under the loaded waterline) for which the point still lies {@code margin} under water when it comes up
     * highest in the envelope, lift counted. For an intake.
     *
     * @param point its height counts for nothing
     * @param margin depth to keep, 0 or more
     */
    public static Length greatestHeightToStayWet(BoatPoint point, AttitudeEnvelope envelope, Length margin) {
        return Length.of(-distanceM(point, envelope, Argument.notNegative("margin", margin) + envelope.lift().si()));
    }

    /**
     * Farthest a point at its height may stand off the centreline and keep the margin, or nothing where it would not even on the centreline.
     * With no heel in the envelope every distance will do; that is an error of the question.
     *
     * @param point its distance to starboard counts for nothing
     * @param envelope heel more than 0
     * @param margin 0 or more
     */
    public static Optional<Length> greatestOffCentre(BoatPoint point, AttitudeEnvelope envelope, Length margin) {
        double phi = Argument.positive("heel", envelope.heel());
        double theta = envelope.trim().si();
        double needed = Argument.notNegative("margin", margin) + envelope.sinkage().si() + Math.abs(point.forward().si()) * Math.sin(theta);
        double most = (point.height().si() * Math.cos(phi) * Math.cos(theta) - needed) / (Math.sin(phi) * Math.cos(theta));
        return most < 0 ? Optional.empty() : Optional.of(Length.of(most));
    }

    /**
     * Heel, towards the point's own side, at which its height falls to the margin, or nothing where it is below the margin already without heel.
     * At most 90 degrees; more is answered as 90.
     *
     * @param envelope trim and sinkage to count; its heel counts for nothing
     * @param margin 0 or more
     */
    public static Optional<Angle> heelThatUsesUp(BoatPoint point, AttitudeEnvelope envelope, Length margin) {
        double theta = envelope.trim().si();
        double needed = (Argument.notNegative("margin", margin) + envelope.sinkage().si()
            + Math.abs(point.forward().si()) * Math.sin(theta)) / Math.cos(theta);
        double off = Math.abs(point.toStarboard().si());
        double up = point.height().si();
        if (up < needed) {
            return Optional.empty();
        }
        double reach = Math.hypot(off, up);
        // up cos(phi) - off sin(phi) = reach cos(phi + atan(off / up))
        double heel = reach == 0 ? Math.PI / 2 : Math.acos(needed / reach) - Math.atan2(off, up);
        return Optional.of(Angle.of(Math.clamp(heel, 0, Math.PI / 2)));
    }

    private static double distanceM(BoatPoint point, AttitudeEnvelope envelope, double marginM) {
        double phi = envelope.heel().si();
        double theta = envelope.trim().si();
        double lost = Math.abs(point.toStarboard().si()) * Math.sin(phi) * Math.cos(theta) + Math.abs(point.forward().si()) * Math.sin(theta);
        return (marginM + lost) / (Math.cos(phi) * Math.cos(theta));
    }
}
