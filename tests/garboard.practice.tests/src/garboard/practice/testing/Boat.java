// SPDX-License-Identifier: EPL-2.0
package garboard.practice.testing;

import garboard.model.CommissioningRecord;
import garboard.model.HullKind;
import garboard.model.Point;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/** Enters a vessel's attitudes and places on board, each in a line; all as text, as a person writes them. */
public final class Boat {

    private Boat() {
    }

    /** A sailing yacht with a design heel and trim. */
    public static CommissioningRecord sailing(String heel, String trim) {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setHullKind(HullKind.SAILING_MONOHULL);
        record.getVessel().setDesignHeel(Angle.valueOf(heel));
        record.getVessel().setDesignTrim(Angle.valueOf(trim));
        return record;
    }

    /** A motor craft with a design roll and trim. */
    public static CommissioningRecord motor(String roll, String trim) {
        CommissioningRecord record = Installation.empty();
        record.getVessel().setHullKind(HullKind.MOTOR_DISPLACEMENT);
        record.getVessel().setDesignRoll(Angle.valueOf(roll));
        record.getVessel().setDesignTrim(Angle.valueOf(trim));
        return record;
    }

    /** A motor craft or, with {@code S}, a sailing yacht. */
    public static CommissioningRecord of(String kind, String heelOrRoll, String trim) {
        return kind.equals("S") ? sailing(heelOrRoll, trim) : motor(heelOrRoll, trim);
    }

    /** Sets the three coordinates, forward, to starboard and up. */
    public static void place(Point point, String x, String y, String z) {
        point.setX(Length.valueOf(x));
        point.setY(Length.valueOf(y));
        point.setZ(Length.valueOf(z));
    }
}
