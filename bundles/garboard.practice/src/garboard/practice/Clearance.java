// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.POINT__X;
import static garboard.model.GarboardPackage.Literals.POINT__Y;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_TRIM;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;

import org.eclipse.emf.ecore.EReference;

import garboard.checks.FeaturePath;
import garboard.model.Point;
import garboard.model.Vessel;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;
import garboard.physics.geometry.PlaceToBuild;
import garboard.quantity.Length;

/**
 * How high a point of the boat stays above the water at the worst of the attitudes that its vessel is designed for.
 *
 * @param height above the inclined waterline, negative under water; carries the accuracy of the point's coordinates
 * @param attitude where it comes down that far
 */
public record Clearance(Length height, Attitude attitude) {

    /** 8 in at design heel: Gerr, Boat Mechanical Systems Handbook, ch. 7. */
    private static final Length SAILING = Length.of(200, "mm");

    /** 6 in at roll. Common practice. */
    private static final Length MOTOR = Length.of(150, "mm");

    /** What has to be entered in any case; design heel or design roll come to it, and the sinkage where it is known. */
    public static FeaturePath[] inputs(EReference point) {
        return new FeaturePath[] { path(point, POINT__X), path(point, POINT__Y), path(point, POINT__Z), path(VESSEL__HULL_KIND),
                path(VESSEL__DESIGN_TRIM) };
    }

    /** The attitudes that the vessel is designed for, its sinkage included. */
    public static AttitudeEnvelope envelope(Vessel vessel) {
        AttitudeEnvelope envelope = DesignAttitude.envelope(vessel);
        // A boat that rises lifts its points too: that is no margin to build on, so only what brings them down counts.
        return vessel.getSinkage() == null ? envelope : envelope.withSinkage(Length.of(Math.max(0, vessel.getSinkage().si())));
    }

    public static Clearance atWorst(Point point, Vessel vessel) {
        return atWorst(point, envelope(vessel));
    }

    public static Clearance atWorst(Point point, AttitudeEnvelope envelope) {
        HeeledHeight.HeightAt lowest = HeeledHeight.lowest(DesignAttitude.point(point), envelope);
        double halfWidthM = halfWidthM(point, lowest.attitude());
        Length height = halfWidthM > 0 ? lowest.height().withAccuracy(Length.of(halfWidthM)) : lowest.height();
        return new Clearance(height, lowest.attitude());
    }

    /** First order: the height is linear in the coordinates, whose errors are independent of each other. */
    private static double halfWidthM(Point point, Attitude attitude) {
        Attitude afloat = attitude.withSinkage(Length.of(0));
        Length none = Length.of(0);
        Length x = Length.of(point.getX().accuracySi().orElse(0));
        Length y = Length.of(point.getY().accuracySi().orElse(0));
        Length z = Length.of(point.getZ().accuracySi().orElse(0));
        return Math.hypot(HeeledHeight.of(BoatPoint.atHeight(z), afloat).si(), Math.hypot(
                HeeledHeight.of(new BoatPoint(x, none, none), afloat).si(), HeeledHeight.of(new BoatPoint(none, y, none), afloat).si()));
    }

    /** The clearance that is customary for vents and crests: 200 mm under sail, 150 mm for motor craft. */
    public static Length customary(Vessel vessel) {
        return Conditions.isSailing(vessel) ? SAILING : MOTOR;
    }

    /** Whose figure {@link #customary} is. */
    public static String origin(Vessel vessel) {
        return Conditions.isSailing(vessel) ? "Gerr, ch. 7: 8 in at design heel" : "common practice: 6 in at roll";
    }

    /**
     * Height above the loaded waterline at which the point would keep the margin without doubt, rounded up to 10 mm: what its other two
     * coordinates may be off is added to the margin.
     */
    public static Length heightToBuild(Point point, AttitudeEnvelope envelope, Length margin) {
        double forwardM = point.getX().accuracySi().orElse(0) * Math.sin(envelope.trim().si());
        double athwartM = point.getY().accuracySi().orElse(0) * Math.sin(envelope.heel().si());
        Length sure = Length.of(margin.si() + Math.hypot(forwardM, athwartM));
        return Rounding.up(PlaceToBuild.leastHeight(DesignAttitude.point(point), envelope, sure), 10, "mm");
    }

    /** The same for a point that is moved to the centreline. */
    public static Length heightToBuildOnCentreline(Point point, AttitudeEnvelope envelope, Length margin) {
        return Rounding.up(PlaceToBuild.leastHeight(DesignAttitude.point(point).withStarboard(Length.of(0)), envelope, margin), 10, "mm");
    }

    /** For example {@code 49 mm (1.94 in) above the water at 25 deg heel to starboard and 3 deg bow up}. */
    public String inWords() {
        return DesignAttitude.heightInWords(height) + " at " + DesignAttitude.inWords(attitude);
    }
}
