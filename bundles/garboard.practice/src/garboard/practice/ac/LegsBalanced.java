// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__LEG_ACURRENT;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__LEG_BCURRENT;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;

/** The legs carry about the same; an overloaded one is told there. */
final class LegsBalanced {

    private LegsBalanced() {
    }

    static Check<AcOutput> check() {
        return LegCurrent.needed("AC-LEG-BALANCE")
            .title("Legs of a split-phase set carry about the same")
            .why("What one leg lacks the other cannot give: an uneven set is full before it is used.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("the lighter leg at most 25 % below the heavier at the largest usual load")
            .applies(notOverloaded())
            .holds(s -> Comparison.atMost(LegCurrent.inWords(s.subject()), LegCurrent.load(s.subject()).imbalance(),
                Limit.of(PhasesBalanced.MOST, "common practice")))
            .remedy("Move circuits from the loaded leg to the other")
            .build();
    }

    private static Condition<AcOutput> notOverloaded() {
        return Condition.<AcOutput>when("unless a leg is overloaded already").known(path(AC_OUTPUT__LEG_ACURRENT), path(AC_OUTPUT__LEG_BCURRENT))
            .uses(path(GENERATOR_SET__RATED_VOLTAGE), path(GENERATOR_SET__RATED_APPARENT_POWER), path(GENERATOR_SET__RATED_POWER),
                path(GENERATOR_SET__RATED_POWER_FACTOR))
            .test(s -> !FullLoad.isKnown(s) || s.set().getRatedVoltage() == null
                || !LegCurrent.load(s.subject()).heavierLeg().isMoreThan(LegCurrent.limit(s)), "a leg is overloaded already");
    }
}
