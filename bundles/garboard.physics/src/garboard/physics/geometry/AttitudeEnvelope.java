// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import garboard.physics.Argument;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/**
 * All the attitudes a boat is designed for: heel on both sides, trim both ways, every angle in between.
 *
 * @param heel greatest heel, 0 to less than 90 degrees, to port and to starboard
 * @param trim greatest trim, 0 to less than 90 degrees, by the bow and by the stern
 * @param sinkage most the water plane rises on the boat, 0 or more; counts for the lowest height of a point
 * @param lift most the boat rises out of the water, 0 or more: light ship, planing; counts for the highest height of a point
 */
public record AttitudeEnvelope(Angle heel, Angle trim, Length sinkage, Length lift) {

    public AttitudeEnvelope {
        Argument.notNegative("heel", heel);
        Argument.notNegative("trim", trim);
        Attitude.belowRightAngle("heel", heel);
        Attitude.belowRightAngle("trim", trim);
        Argument.notNegative("sinkage", sinkage);
        Argument.notNegative("lift", lift);
    }

    /** Heel to this angle on both sides, no trim, no sinkage, no lift. */
    public static AttitudeEnvelope toHeel(Angle heel) {
        return new AttitudeEnvelope(heel, Angle.of(0), Length.of(0), Length.of(0));
    }

    public AttitudeEnvelope toTrim(Angle angle) {
        return new AttitudeEnvelope(heel, angle, sinkage, lift);
    }

    public AttitudeEnvelope withSinkage(Length rise) {
        return new AttitudeEnvelope(heel, trim, rise, lift);
    }

    public AttitudeEnvelope withLift(Length rise) {
        return new AttitudeEnvelope(heel, trim, sinkage, rise);
    }
}
