// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import java.util.Optional;

import garboard.physics.geometry.Attitude;
import garboard.quantity.Angle;
import garboard.report.drawing.Arrangement;
import garboard.report.drawing.PlacedPart;
import garboard.report.drawing.Water;
import garboard.session.Listeners;

/** The attitude that a person looks at: heel and trim in degrees, level at first. It is no part of the record. */
public final class AttitudeChoice {

    private final Listeners<AttitudeChoice> listeners = new Listeners<>();
    private double heel;
    private double trim;

    /** {@return degrees of heel, starboard side down positive} */
    public double heel() {
        return heel;
    }

    /** {@return degrees of trim, bow up positive} */
    public double trim() {
        return trim;
    }

    public Listeners.Subscription onChange(java.util.function.Consumer<? super AttitudeChoice> listener) {
        return listeners.add(listener);
    }

    /** Heels and trims, as far as it makes sense for the vessel. */
    public void set(double heelDegrees, double trimDegrees, Water water) {
        double mostHeel = heelReach(water);
        double mostTrim = trimReach(water);
        double newHeel = Math.clamp(heelDegrees, -mostHeel, mostHeel);
        double newTrim = Math.clamp(trimDegrees, -mostTrim, mostTrim);
        if (newHeel != heel || newTrim != trim) {
            heel = newHeel;
            trim = newTrim;
            listeners.tell(this);
        }
    }

    public void upright(Water water) {
        set(0, 0, water);
    }

    /** {@return the point whose worst attitude is asked for: the one chosen where its place is entered, else the one that comes lowest} */
    public static Optional<PlacedPart> pointInQuestion(Arrangement arrangement, Optional<String> chosen) {
        return chosen.flatMap(arrangement::part).filter(part -> part.place().isPresent()).or(arrangement::worst);
    }

    /** Lays the boat so that the point in question comes lowest. @return whether there is one, and an attitude to design for */
    public boolean worst(Arrangement arrangement, Optional<String> chosen) {
        Optional<Attitude> worst = worstAttitude(arrangement, chosen);
        worst.ifPresent(attitude -> set(Math.toDegrees(attitude.heel().si()), Math.toDegrees(attitude.trim().si()), arrangement.water()));
        return worst.isPresent();
    }

    /** {@return the attitude of those designed for in which the point in question comes lowest} */
    public static Optional<Attitude> worstAttitude(Arrangement arrangement, Optional<String> chosen) {
        Water water = arrangement.water();
        if (water.heel().si() == 0 && water.trim().si() == 0) {
            return Optional.empty();
        }
        return pointInQuestion(arrangement, chosen).flatMap(PlacedPart::place).map(place -> water.worst(place).attitude());
    }

    /** {@return the attitude to draw; the sinkage of the vessel counts} */
    public Attitude attitude(Water water) {
        return water.at(Angle.of(heel, "deg"), Angle.of(trim, "deg"));
    }

    /** {@return degrees to which one can heel her} */
    public static double heelReach(Water water) {
        return Math.toDegrees(water.heelReach().si());
    }

    /** {@return degrees to which one can trim her} */
    public static double trimReach(Water water) {
        return Math.toDegrees(water.trimReach().si());
    }
}
