// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import garboard.quantity.Length;

/**
 * A point fixed to the boat.
 *
 * @param forward distance forward of the centre of flotation; aft is negative
 * @param toStarboard distance to starboard of the centreline; to port is negative
 * @param height height above the loaded waterline, measured square to the waterplane of the boat at rest; below is negative
 */
public record BoatPoint(Length forward, Length toStarboard, Length height) {

    private static final Length NONE = Length.of(0);

    /** A point over the centre of flotation, on the centreline. */
    public static BoatPoint atHeight(Length height) {
        return new BoatPoint(NONE, NONE, height);
    }

    public BoatPoint withForward(Length distance) {
        return new BoatPoint(distance, toStarboard, height);
    }

    public BoatPoint withStarboard(Length distance) {
        return new BoatPoint(forward, distance, height);
    }

    public BoatPoint withHeight(Length other) {
        return new BoatPoint(forward, toStarboard, other);
    }

    /** The vector from the other point to this one. */
    BoatPoint from(BoatPoint other) {
        return new BoatPoint(Length.of(forward.si() - other.forward.si()), Length.of(toStarboard.si() - other.toStarboard.si()),
            Length.of(height.si() - other.height.si()));
    }
}
