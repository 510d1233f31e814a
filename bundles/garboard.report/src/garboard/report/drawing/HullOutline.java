// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.awt.geom.Path2D;
import java.util.Optional;

import garboard.model.CommissioningRecord;
import garboard.model.Vessel;
import garboard.quantity.Length;

/** Outlines of a hull of the entered main dimensions; only the dimensions are the vessel's own. In metres, up. */
final class HullOutline {

    private HullOutline() {
    }

    /** Seen from starboard, the bow to the right, amidships at zero. */
    static Optional<Path2D> side(CommissioningRecord record) {
        Vessel vessel = record.getVessel();
        if (vessel == null || missing(vessel.getLengthOverall(), vessel.getDraught(), vessel.getFreeboardAmidships())) {
            return Optional.empty();
        }
        double overall = vessel.getLengthOverall().si();
        double water = vessel.getWaterlineLength() == null ? overall * 0.9 : Math.min(vessel.getWaterlineLength().si(), overall);
        return Optional.of(side(overall, water, vessel.getDraught().si(), vessel.getFreeboardAmidships().si()));
    }

    /** The same of dimensions in metres. */
    static Path2D side(double lengthOverall, double waterlineLength, double draught, double freeboard) {
        double overall = lengthOverall / 2;
        double water = waterlineLength / 2;
        var hull = new Path2D.Double();
        hull.moveTo(-overall, freeboard);
        hull.quadTo(0, freeboard * 0.97, overall, freeboard * 1.2);
        hull.lineTo(water, 0);
        hull.curveTo(water * 0.6, -draught * 0.9, water * 0.1, -draught, -water * 0.2, -draught);
        hull.curveTo(-water * 0.6, -draught, -water * 0.85, -draught * 0.3, -water, 0);
        hull.closePath();
        return hull;
    }

    /** Seen from aft, starboard to the right, the centreline at zero. */
    static Optional<Path2D> cross(CommissioningRecord record) {
        Vessel vessel = record.getVessel();
        if (vessel == null || missing(vessel.getBeam(), vessel.getDraught(), vessel.getFreeboardAmidships())) {
            return Optional.empty();
        }
        return Optional.of(cross(vessel.getBeam().si(), vessel.getDraught().si(), vessel.getFreeboardAmidships().si()));
    }

    /** The same of dimensions in metres. */
    static Path2D cross(double beam, double draught, double freeboard) {
        double half = beam / 2;
        var hull = new Path2D.Double();
        hull.moveTo(-half, freeboard);
        hull.lineTo(-half * 0.96, 0);
        hull.curveTo(-half * 0.85, -draught * 0.55, -half * 0.25, -draught, 0, -draught);
        hull.curveTo(half * 0.25, -draught, half * 0.85, -draught * 0.55, half * 0.96, 0);
        hull.lineTo(half, freeboard);
        hull.closePath();
        return hull;
    }

    private static boolean missing(Length... dimensions) {
        for (Length dimension : dimensions) {
            if (dimension == null || dimension.si() <= 0) {
                return true;
            }
        }
        return false;
    }
}
