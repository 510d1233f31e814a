// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_DEVICE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_RATING;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__DESIGN_AMBIENT;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DESIGN_AMBIENT;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.model.ProtectionKind;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Current;

/** 46 CFR 183.320(f): the generator has a breaker set to at most 115 % of its full load, of the derated one in a hot space. */
final class MainDeviceRatingOnPassengerVessel {

    private MainDeviceRatingOnPassengerVessel() {
    }

    static Check<AcOutput> check() {
        return FullLoad.needed(Check.check("AC-DEVICE-RATING-183-320", AcOutput.class))
            .title("Main breaker guards the set against overload (small passenger vessels)")
            .why("A breaker too large for the set lets it be overloaded for hours, until its windings burn and the vessel is dark.")
            .basis(Sources.cfr46("183.320(f)"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 115 % of full load, without a next size up; 80 % of that for a 40 degC set in a hotter space")
            .applies(Conditions.smallPassengerVessel())
            .needs(AC_OUTPUT__PROTECTION_DEVICE)
            .needsWhen(s -> fitted(s), path(AC_OUTPUT__PROTECTION_RATING), path(GENERATOR_SET__DESIGN_AMBIENT))
            .needsWhen(s -> fitted(s) && HotSpace.matters(s), path(VENTILATION__DESIGN_AMBIENT))
            .uses(GENERATOR_SET__PLATE_SHOWS_DERATED_POWER)
            .holds(MainDeviceRatingOnPassengerVessel::compare)
            .remedy("Fit or set a smaller device", s -> fitted(s) ? Optional.of(MainDeviceRating.smaller(s, limit(s).value()))
                : Optional.of(Remedy.of("Fit a trip-free circuit breaker for at most 115 % of the set's full load")))
            .build();
    }

    private static boolean fitted(Situation<AcOutput> s) {
        return s.subject().getProtectionDevice() != ProtectionKind.NONE;
    }

    private static Comparison compare(Situation<AcOutput> s) {
        return fitted(s) ? MainDeviceRating.compare(s, fullLoad(s), limit(s)) : OutputProtected.compare(s.subject().getProtectionDevice());
    }

    private static Limit<Current> limit(Situation<AcOutput> s) {
        return Limit.of(Current.of(1.15 * fullLoad(s).si()), "46 CFR 183.320(f): 115 % of full load");
    }

    private static Current fullLoad(Situation<AcOutput> s) {
        return Current.of(FullLoad.current(s).si() * HotSpace.share(s).si());
    }
}
