// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import garboard.model.CommissioningRecord;
import garboard.model.HullKind;
import garboard.model.Vessel;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/** The water about a vessel in the attitudes that it is designed for, as far as they are entered. */
final class Water {

    private static final Angle NONE = Angle.of(0);
    private static final Length LEVEL = Length.of(0);

    private final Angle heel;
    private final Angle trim;
    private final Length sinkage;
    private final boolean roll;

    private Water(Angle heel, Angle trim, Length sinkage, boolean roll) {
        this.heel = heel;
        this.trim = trim;
        this.sinkage = sinkage;
        this.roll = roll;
    }

    static Water about(CommissioningRecord record) {
        Vessel vessel = record.getVessel();
        if (vessel == null) {
            return new Water(NONE, NONE, LEVEL, false);
        }
        boolean sails = vessel.getHullKind() == HullKind.SAILING_MONOHULL || vessel.getHullKind() == HullKind.SAILING_MULTIHULL;
        Angle usual = sails ? vessel.getDesignHeel() : vessel.getDesignRoll();
        Angle other = sails ? vessel.getDesignRoll() : vessel.getDesignHeel();
        boolean roll = !sails && vessel.getDesignRoll() != null || sails && vessel.getDesignHeel() == null;
        return new Water(entered(usual).or(() -> entered(other)).orElse(NONE), entered(vessel.getDesignTrim()).orElse(NONE),
            Optional.ofNullable(vessel.getSinkage()).filter(rise -> rise.si() >= 0).orElse(LEVEL), roll);
    }

    private static Optional<Angle> entered(Angle angle) {
        return Stream.ofNullable(angle).filter(found -> found.si() > 0 && found.si() < Math.toRadians(80)).findFirst();
    }

    Angle heel() {
        return heel;
    }

    Angle trim() {
        return trim;
    }

    /** What the inclination across the boat is called. */
    String heelWord() {
        return roll ? "roll" : "heel";
    }

    /** Whether there is an attitude other than upright to show. */
    boolean inclines() {
        return heel.si() > 0 || trim.si() > 0;
    }

    /** Height of a point above the water in the attitude that brings it lowest. */
    Length lowest(BoatPoint point) {
        return HeeledHeight.lowest(point, AttitudeEnvelope.toHeel(heel).toTrim(trim).withSinkage(sinkage)).height();
    }

    Attitude heeled(int sign) {
        return Attitude.heeled(Angle.of(sign * heel.si())).withSinkage(sinkage);
    }

    Attitude trimmed(int sign) {
        return Attitude.upright().withTrim(Angle.of(sign * trim.si())).withSinkage(sinkage);
    }

    /** Level and, where a trim is entered, trimmed both ways. */
    List<Attitude> trims() {
        Attitude level = Attitude.upright().withSinkage(sinkage);
        return trim.si() > 0 ? List.of(level, trimmed(1), trimmed(-1)) : List.of(level);
    }

    /**
     * Height on the boat, in metres above the loaded waterline, to which the water comes at a place in an attitude. The height of a point
     * above the water grows evenly with its height on the boat, so two heights tell where it is none.
     */
    static double surface(BoatPoint place, Attitude attitude) {
        double low = HeeledHeight.of(place.withHeight(Length.of(0)), attitude).si();
        double high = HeeledHeight.of(place.withHeight(Length.of(1)), attitude).si();
        return -low / (high - low);
    }
}
