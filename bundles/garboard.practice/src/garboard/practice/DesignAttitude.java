// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import garboard.checks.Situation;
import garboard.model.Point;
import garboard.model.Vessel;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.BoatPoint;
import garboard.quantity.Angle;
import garboard.quantity.Display;
import garboard.quantity.Length;

/** The attitudes that a vessel is designed for: the heel of a sailing yacht, the roll of a motor craft, trim both ways. */
public final class DesignAttitude {

    private DesignAttitude() {
    }

    /** Whether the design heel counts; for {@code needsWhen}. */
    public static boolean heels(Situation<?> situation) {
        return Conditions.isSailing(situation.vessel());
    }

    /** Whether the design roll counts; for {@code needsWhen}. */
    public static boolean rolls(Situation<?> situation) {
        return !heels(situation);
    }

    /** Heel or roll and trim, without sinkage or lift. The features that it reads have to be entered. */
    public static AttitudeEnvelope envelope(Vessel vessel) {
        Angle heel = Conditions.isSailing(vessel) ? vessel.getDesignHeel() : vessel.getDesignRoll();
        return AttitudeEnvelope.toHeel(heel).toTrim(vessel.getDesignTrim());
    }

    /** A point of the record whose three coordinates are entered. */
    public static BoatPoint point(Point point) {
        return new BoatPoint(point.getX(), point.getY(), point.getZ());
    }

    /** In words, such as {@code 30 deg heel to port and 3 deg bow up}. */
    public static String inWords(Attitude attitude) {
        String heel = side(attitude.heel(), "heel to starboard", "heel to port");
        String trim = side(attitude.trim(), "bow up", "bow down");
        if (heel.isEmpty() && trim.isEmpty()) {
            return "no heel and no trim";
        }
        return heel.isEmpty() || trim.isEmpty() ? heel + trim : heel + " and " + trim;
    }

    /** A height in words, such as {@code 96 mm (3.8 in) under water}. */
    public static String heightInWords(Length height) {
        return Figures.both(Length.of(Math.abs(height.si()))) + (height.si() < 0 ? " under water" : " above the water");
    }

    private static String side(Angle angle, String positive, String negative) {
        if (angle.si() == 0) {
            return "";
        }
        return Display.formatIn(Angle.of(Math.abs(angle.si())), "deg") + " " + (angle.si() > 0 ? positive : negative);
    }
}
