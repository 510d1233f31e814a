// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;
import garboard.model.HullKind;
import garboard.model.Vessel;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;
import garboard.physics.geometry.HeeledHeight.HeightAt;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/** The water about a vessel in the attitudes that it is designed for, as far as they are entered. */
public final class Water {

    private static final Angle NONE = Angle.of(0);
    private static final Length LEVEL = Length.of(0);

    private final Angle heel;
    private final Angle trim;
    private final Length sinkage;
    private final boolean roll;
    private final boolean sails;

    private Water(Angle heel, Angle trim, Length sinkage, boolean roll, boolean sails) {
        this.heel = heel;
        this.trim = trim;
        this.sinkage = sinkage;
        this.roll = roll;
        this.sails = sails;
    }

    static Water about(CommissioningRecord record) {
        Vessel vessel = record.getVessel();
        if (vessel == null) {
            return new Water(NONE, NONE, LEVEL, false, false);
        }
        boolean sails = sails(vessel);
        Angle usual = sails ? vessel.getDesignHeel() : vessel.getDesignRoll();
        Angle other = sails ? vessel.getDesignRoll() : vessel.getDesignHeel();
        boolean roll = !sails && vessel.getDesignRoll() != null || sails && vessel.getDesignHeel() == null;
        return new Water(entered(usual).or(() -> entered(other)).orElse(NONE), entered(vessel.getDesignTrim()).orElse(NONE),
            Optional.ofNullable(vessel.getSinkage()).filter(rise -> rise.si() >= 0).orElse(LEVEL), roll, sails);
    }

    /** {@return the name of the field of the vessel where its heel or roll belongs: a sailing vessel heels, others roll} */
    static String fieldOfHeel(CommissioningRecord record) {
        boolean sails = record.getVessel() != null && sails(record.getVessel());
        return (sails ? Literals.VESSEL__DESIGN_HEEL : Literals.VESSEL__DESIGN_ROLL).getName();
    }

    private static boolean sails(Vessel vessel) {
        return vessel.getHullKind() == HullKind.SAILING_MONOHULL || vessel.getHullKind() == HullKind.SAILING_MULTIHULL;
    }

    private static Optional<Angle> entered(Angle angle) {
        return Stream.ofNullable(angle).filter(found -> found.si() > 0 && found.si() < Math.toRadians(80)).findFirst();
    }

    /** {@return the heel or roll to design for, to either side; none where it is not entered} */
    public Angle heel() {
        return heel;
    }

    /** {@return the trim to design for, either way; none where it is not entered} */
    public Angle trim() {
        return trim;
    }

    /** {@return how far the water plane rises on the boat when she is loaded or under way} */
    public Length sinkage() {
        return sinkage;
    }

    /** {@return whether the inclination across the boat is a roll, not a steady heel; a sailing vessel of which nothing is entered heels} */
    public boolean rolls() {
        return roll && !(sails && heel.si() == 0);
    }

    /** {@return how far a person may want to heel her to see what happens: well beyond what she is designed for} */
    public Angle heelReach() {
        return reach(heel, 30, 75);
    }

    /** {@return the same for trim} */
    public Angle trimReach() {
        return reach(trim, 10, 45);
    }

    /** Half as much again as designed for, to the next five degrees, between two bounds in degrees, and never less than designed for. */
    private static Angle reach(Angle designed, double least, double most) {
        double degrees = Math.toDegrees(designed.si());
        double beyond = Math.clamp(5 * Math.ceil(1.5 * degrees / 5 - 1e-9), least, most);
        return Angle.of(Math.max(beyond, degrees), "deg");
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
        return worst(point).height();
    }

    /** {@return the attitude of those designed for that brings a point lowest, and how high above the water it then stands} */
    public HeightAt worst(BoatPoint point) {
        return HeeledHeight.lowest(point, AttitudeEnvelope.toHeel(heel).toTrim(trim).withSinkage(sinkage));
    }

    /** {@return an attitude in the water that the vessel is designed for: its sinkage counts} */
    public Attitude at(Angle heeled, Angle trimmed) {
        return new Attitude(heeled, trimmed, sinkage);
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
