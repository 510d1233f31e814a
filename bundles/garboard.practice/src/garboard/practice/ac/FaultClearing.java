// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_RATING;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__TRIP_CURVE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE;

import java.util.function.Predicate;

import garboard.checks.Check;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.model.TripCurve;
import garboard.physics.ac.Breaker;
import garboard.practice.Figures;
import garboard.quantity.Current;

/** Whether the short-circuit current that the set sustains trips its breaker at once. */
final class FaultClearing {

    private FaultClearing() {
    }

    static boolean isMagnetic(AcOutput output) {
        return switch (output.getTripCurve()) {
            case TYPE_B, TYPE_C, TYPE_D -> true;
            case THERMAL_ONLY, ELECTRONIC, NOT_ENTERED -> false;
        };
    }

    static Current sustained(Situation<AcOutput> s) {
        return Breaker.sustainedShortCircuit(FullLoad.current(s), s.set().getSustainedShortCircuitMultiple());
    }

    /** Whether the breaker is sure to open at once, whatever the device within its standard. */
    static boolean isSure(Situation<AcOutput> s) {
        return s.subject().getTripCurve() == TripCurve.ELECTRONIC
            || isMagnetic(s.subject()) && breaker(s.subject()).on(sustained(s)) == Breaker.Trip.SURE;
    }

    static String inWords(Situation<AcOutput> s) {
        if (s.subject().getTripCurve() == TripCurve.ELECTRONIC) {
            return "an electronic trip can be set to what the set gives";
        }
        if (!isMagnetic(s.subject())) {
            return "the breaker has a thermal trip only";
        }
        return "the set sustains " + Figures.both(sustained(s)) + " in a short circuit; the breaker is sure to trip at once from "
            + Figures.both(breaker(s.subject()).tripsFrom());
    }

    private static Breaker breaker(AcOutput output) {
        Breaker.Curve curve = switch (output.getTripCurve()) {
            case TYPE_C -> Breaker.Curve.C;
            case TYPE_D -> Breaker.Curve.D;
            default -> Breaker.Curve.B;
        };
        return new Breaker(output.getProtectionRating(), curve);
    }

    /** Declares what {@link #isSure} and {@link #inWords} read, asked for only where the predicate holds. */
    static Check.Builder<AcOutput> needed(Check.Builder<AcOutput> check, Predicate<Situation<AcOutput>> when) {
        return check.needsWhen(when, path(AC_OUTPUT__TRIP_CURVE))
            .needsWhen(s -> when.test(s) && isMagnetic(s.subject()), path(AC_OUTPUT__PROTECTION_RATING),
                path(GENERATOR_SET__SUSTAINED_SHORT_CIRCUIT_MULTIPLE), path(GENERATOR_SET__RATED_VOLTAGE), path(GENERATOR_SET__PHASES))
            .uses(GENERATOR_SET__RATED_APPARENT_POWER)
            .needsWhen(s -> when.test(s) && isMagnetic(s.subject()) && s.set().getRatedApparentPower() == null, path(GENERATOR_SET__RATED_POWER),
                path(GENERATOR_SET__RATED_POWER_FACTOR));
    }
}
