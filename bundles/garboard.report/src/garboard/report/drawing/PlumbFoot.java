// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;

/**
 * Where a plumb line from a point of the boat meets the water, in the boat's own axes, in metres. The line runs along the vertical of the
 * world, which in the boat's axes is (sin trim, -sin heel cos trim, cos heel cos trim): the factors of x, y and z in {@link HeeledHeight}.
 *
 * @param forward distance forward
 * @param toStarboard distance to starboard
 * @param height height above the loaded waterline
 * @param clearance length of the line, negative where the point is under water
 */
record PlumbFoot(double forward, double toStarboard, double height, double clearance) {

    static PlumbFoot of(BoatPoint point, Attitude attitude) {
        double clearance = HeeledHeight.of(point, attitude).si();
        double heel = attitude.heel().si();
        double trim = attitude.trim().si();
        return new PlumbFoot(point.forward().si() - clearance * Math.sin(trim),
            point.toStarboard().si() + clearance * Math.sin(heel) * Math.cos(trim),
            point.height().si() - clearance * Math.cos(heel) * Math.cos(trim), clearance);
    }
}
