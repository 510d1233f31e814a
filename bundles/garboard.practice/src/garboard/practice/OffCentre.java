// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import garboard.model.Point;
import garboard.model.Vessel;
import garboard.physics.Argument;
import garboard.quantity.Length;

/** How far a point of the boat lies off the centreline. */
public final class OffCentre {

    private OffCentre() {
    }

    /** Distance to either side, with the accuracy of the coordinate. */
    public static Length distance(Point point) {
        Length y = point.getY();
        if (y.si() >= 0) {
            return y;
        }
        Length distance = Length.of(-y.si());
        return y.accuracySi().isPresent() ? distance.withAccuracy(Length.of(y.accuracySi().getAsDouble())) : distance;
    }

    /** A tenth of the beam, which has to be more than 0. */
    public static Length tenthOfBeam(Vessel vessel) {
        return Length.of(0.1 * Argument.positive("beam", vessel.getBeam()));
    }

    /** The coordinate of a point at this distance, on the side where the point is now. */
    public static Length onTheSameSide(Point point, Length distance) {
        return point.getY().si() < 0 ? Length.of(-distance.si()) : distance;
    }

    /** For example {@code 600 mm (23.6 in) to starboard of the centreline}. */
    public static String inWords(Point point) {
        if (point.getY().si() == 0) {
            return "on the centreline";
        }
        return Figures.both(distance(point)) + (point.getY().si() < 0 ? " to port" : " to starboard") + " of the centreline";
    }
}
