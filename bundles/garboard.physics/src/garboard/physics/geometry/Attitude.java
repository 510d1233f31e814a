// SPDX-License-Identifier: EPL-2.0
package garboard.physics.geometry;

import garboard.physics.Argument;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/**
 * How the boat lies in the water.
 *
 * @param heel turn about the boat's own long axis, starboard side down positive; less than 90 degrees either way
 * @param trim turn about the transverse axis, bow up positive; less than 90 degrees either way
 * @param sinkage rise of the water plane at the centre of flotation: added load, squat, stern wave; negative where the boat lifts
 */
public record Attitude(Angle heel, Angle trim, Length sinkage) {

    private static final Angle NONE = Angle.of(0);

    public Attitude {
        belowRightAngle("heel", heel);
        belowRightAngle("trim", trim);
    }

    public static Attitude upright() {
        return new Attitude(NONE, NONE, Length.of(0));
    }

    public static Attitude heeled(Angle heel) {
        return upright().withHeel(heel);
    }

    public Attitude withHeel(Angle angle) {
        return new Attitude(angle, trim, sinkage);
    }

    public Attitude withTrim(Angle angle) {
        return new Attitude(heel, angle, sinkage);
    }

    public Attitude withSinkage(Length rise) {
        return new Attitude(heel, trim, rise);
    }

    /**
     * The attitude that two inclinometers read: one along the boat, one athwart it. The athwart one shows the angle of the transverse axis to
     * the horizontal, which is less than the heel as soon as there is trim: sin(athwart) = sin(heel) cos(trim).
     *
     * @param trim reading along the boat, bow up positive
     * @param athwart reading across the boat, starboard down positive; at most 90 degrees less the trim
     * @throws garboard.physics.OutOfRangeException where no attitude gives both readings
     */
    public static Attitude fromInclinometers(Angle trim, AthwartReading athwart) {
        belowRightAngle("trim", trim);
        double sine = Math.sin(athwart.angle().si()) / Math.cos(trim.si());
        Argument.between("athwart", athwart.angle(), -Math.PI / 2 + Math.abs(trim.si()), Math.PI / 2 - Math.abs(trim.si()),
            "less than 90 deg together with the trim");
        return upright().withTrim(trim).withHeel(Angle.of(Math.asin(Math.clamp(sine, -1, 1))));
    }

    /** What an inclinometer across the boat reads in this attitude: asin(sin(heel) cos(trim)). */
    public AthwartReading athwartReading() {
        return new AthwartReading(Angle.of(Math.asin(Math.sin(heel.si()) * Math.cos(trim.si()))));
    }

    /** Angle of the transverse axis to the horizontal, as an inclinometer across the boat shows it. Not the heel. */
    public record AthwartReading(Angle angle) {
    }

    static void belowRightAngle(String name, Angle angle) {
        double most = Math.toRadians(89.999);
        Argument.between(name, angle, -most, most, "less than 90 deg");
    }
}
