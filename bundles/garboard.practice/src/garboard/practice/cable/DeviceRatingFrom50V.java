// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_DEVICE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_RATING;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTORS_IN_BUNDLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__INSULATION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__IN_ENGINE_SPACE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION_RATING;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.CableRun;
import garboard.model.ProtectionKind;
import garboard.physics.cable.OvercurrentDevice;
import garboard.practice.Figures;
import garboard.quantity.Current;

/** From 50 V up: at most the permitted current, or the next standard rating as long as it is within 150 %. */
final class DeviceRatingFrom50V {

    /** Where the list of standard ratings ends. */
    private static final Current LARGEST_STANDARD = Current.of(400, "A");

    private DeviceRatingFrom50V() {
    }

    /** Everything but authority. The output cable's device is entered with the switchboard, any other with its cable. */
    static Check.Builder<CableRun> check(String id) {
        return Check.check(id, CableRun.class)
            .among(CableRuns::worksFrom50V, CableRuns.decidingVoltage())
            .why("A breaker too large lets the conductor glow before it trips.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most the permitted current; where no standard rating equals it the next larger one, within 150 % of it")
            .applies(deviceFitted())
            .applies(CableConditions.readableSize())
            .needs(CABLE_RUN__INSULATION, CABLE_RUN__IN_ENGINE_SPACE, CABLE_RUN__CONDUCTORS_IN_BUNDLE)
            .needsWhen(s -> CableRuns.isOutputCable(s.subject()), path(AC_OUTPUT__PROTECTION_RATING))
            .needsWhen(s -> !CableRuns.isOutputCable(s.subject()), path(CABLE_RUN__PROTECTION_RATING))
            .uses(CABLE_RUN__PROTECTION, AC_OUTPUT__PROTECTION_DEVICE)
            .holds(s -> DeviceRating.compare(s.subject(), rating(s), limit(s.subject())))
            .remedy("Fit a smaller device or lay a larger conductor", DeviceRatingFrom50V::remedy);
    }

    private static Condition<CableRun> deviceFitted() {
        return Condition.<CableRun>when("where a fuse or circuit breaker is fitted").known()
            .test(s -> kind(s) != ProtectionKind.NONE, "no fuse or circuit breaker is fitted");
    }

    private static ProtectionKind kind(Situation<? extends CableRun> s) {
        return CableRuns.isOutputCable(s.subject()) ? s.record().getAcOutput().getProtectionDevice() : s.subject().getProtection();
    }

    private static Current rating(Situation<CableRun> s) {
        return CableRuns.isOutputCable(s.subject()) ? s.record().getAcOutput().getProtectionRating() : s.subject().getProtectionRating();
    }

    private static Optional<Limit<Current>> limit(CableRun run) {
        return Table5.from50V(run, CableRuns.size(run)).map(DeviceRatingFrom50V::limit);
    }

    /** Beyond the standard ratings, and below the smallest of them, the permitted current itself. */
    private static Limit<Current> limit(Current allowed) {
        if (allowed.isMoreThan(LARGEST_STANDARD)) {
            return Limit.of(allowed, "33 CFR 183.425 Table 5");
        }
        return OvercurrentDevice.largestFrom50V(allowed).map(largest -> Limit.of(largest, "33 CFR 183.455(c)(2): standard "
            + "rating for the permitted "
            + Figures.both(allowed))).orElseGet(() -> Limit.of(allowed, "33 CFR 183.425 Table 5"));
    }

    private static Optional<Remedy> remedy(Situation<CableRun> s) {
        return limit(s.subject()).map(Limit::value).map(DeviceRating::largest).map(largest -> CableRuns.isOutputCable(s.subject())
            ? DeviceRating.smaller(largest).setting(s.record().getAcOutput(), AC_OUTPUT__PROTECTION_RATING, largest)
            : DeviceRating.smaller(largest).setting(s.subject(), CABLE_RUN__PROTECTION_RATING, largest));
    }
}
