// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_RATING;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINE_ABOARD;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Current;

/** 115 % of the full-load current, the figure of the law for passenger and fishing vessels, on any boat. */
final class MainDeviceRatingInAnyBoat {

    private MainDeviceRatingInAnyBoat() {
    }

    static Check<AcOutput> check() {
        return MainDeviceRating.check("AC-DEVICE-RATING")
            .title("Main breaker guards the set against overload")
            .basis(Sources.yardstick("46 CFR 28.860(a) and 183.320(f)").othersSay("33 CFR 183.460(b), from memory: 120 %"))
            .limit("at most 115 % of the set's full-load current")
            .applies(Conditions.unlessLawForPassengers("183.320(f)"))
            .applies(AcConditions.deviceFitted())
            .applies(withinTheLaw())
            .holds(s -> MainDeviceRating.compare(s, FullLoad.current(s), limit(s)))
            .remedy("Fit a smaller device", s -> Optional.of(MainDeviceRating.smaller(s, limit(s).value())))
            .build();
    }

    /** Where the law is broken the law says so. */
    private static Condition<AcOutput> withinTheLaw() {
        return Condition.<AcOutput>when("unless 33 CFR 183.460(b) is broken already").known()
            .uses(path(VESSEL__GASOLINE_ENGINE_ABOARD), path(GENERATOR_SET__FUEL), path(AC_OUTPUT__PROTECTION_RATING),
                path(GENERATOR_SET__RATED_APPARENT_POWER), path(GENERATOR_SET__RATED_POWER), path(GENERATOR_SET__RATED_POWER_FACTOR),
                path(GENERATOR_SET__RATED_VOLTAGE), path(GENERATOR_SET__PHASES))
            .test(s -> s.subject().getProtectionRating() == null || !Conditions.gasolineLawBinds(s) || !FullLoad.isKnownAsCurrent(s)
                || !s.subject().getProtectionRating().isMoreThan(MainDeviceRatingByLaw.most(s)), "33 CFR 183.460(b) asks for a smaller device, as law");
    }

    private static Limit<Current> limit(Situation<AcOutput> s) {
        return Limit.of(Current.of(1.15 * FullLoad.current(s).si()), "46 CFR 28.860(a) and 183.320(f): 115 % of full load");
    }
}
