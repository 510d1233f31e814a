// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.MOUNTING__DC_NEGATIVE_ISOLATED;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINES;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINE_ABOARD;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.Mounting;
import garboard.model.StartingBattery;
import garboard.model.Vessel;
import garboard.practice.Conditions;

/** The same for the diesel set and the main engine of any boat, unless the set has an insulated return. */
final class CommonNegativeInAnyBoat {

    private CommonNegativeInAnyBoat() {
    }

    static Check<StartingBattery> check() {
        return NegativeLink.check("CABLE-COMMON-NEGATIVE")
            .title("Negatives of set and main engine are joined")
            .basis(Basis.commonPractice().othersSay("33 CFR 183.415 is law for several gasoline engines"))
            .applies(Condition.when("unless 33 CFR 183.415 asks for it as law").known().uses(path(VESSEL__GASOLINE_ENGINE_ABOARD),
                path(GENERATOR_SET__FUEL), path(VESSEL__GASOLINE_ENGINES)).test(s -> !lawBinds(s), "33 CFR 183.415 asks for it on this boat, as law"))
            .applies(Condition.when("unless the set has an insulated return").known().uses(path(MOUNTING__DC_NEGATIVE_ISOLATED)).test(
                s -> s.optional(s.record().getMounting(), Mounting::getDcNegativeIsolated).filter(Answer.YES::equals).isEmpty(),
                "the set has an insulated return and no negative to join"))
            .build();
    }

    private static boolean lawBinds(Situation<?> s) {
        return Conditions.gasolineLawBinds(s) && s.optional(s.record().getVessel(), Vessel::getGasolineEngines).filter(count -> count > 1).isPresent();
    }
}
