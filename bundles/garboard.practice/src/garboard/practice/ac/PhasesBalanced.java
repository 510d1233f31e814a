// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__LOADS;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;

import java.util.List;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.model.PhaseSystem;
import garboard.quantity.ApparentPower;
import garboard.quantity.Ratio;

/** The phases carry about the same; an overloaded one is told there. */
final class PhasesBalanced {

    static final Ratio MOST = Ratio.of(25, "%");

    private PhasesBalanced() {
    }

    static Check<AcOutput> check() {
        return PhaseDemand.check("AC-PHASE-BALANCE")
            .title("Loads are spread evenly over the phases")
            .why("Uneven loads make the voltages uneven, and motors run hot on them.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("the lightest phase at most 25 % below the heaviest, by the load list")
            .applies(noneOverloaded())
            .holds(s -> {
                PhaseSystem set = s.set().getPhases();
                LoadList.Running worst = PhaseDemand.worst(s.subject(), set);
                return Comparison.atMost(PhaseDemand.inWords(worst, set), imbalance(PhaseDemand.on(worst, set)), Limit.of(MOST, "common practice"));
            })
            .remedy("Move single-phase circuits from the loaded phase to another")
            .build();
    }

    private static Ratio imbalance(List<ApparentPower> phases) {
        double most = PhaseDemand.heaviest(phases).si();
        return Ratio.of(most == 0 ? 0 : (most - PhaseDemand.lightest(phases).si()) / most);
    }

    private static Condition<AcOutput> noneOverloaded() {
        return Condition.<AcOutput>when("unless a phase is overloaded already").known(LoadList.inputs(GENERATOR_SET__PHASES))
            .uses(path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__POWER_FACTOR), path(GENERATOR_SET__RATED_APPARENT_POWER), path(GENERATOR_SET__RATED_POWER),
                path(GENERATOR_SET__RATED_POWER_FACTOR))
            .test(s -> {
                PhaseSystem set = s.set().getPhases();
                return !FullLoad.isKnown(s) || !PhaseDemand.heaviest(PhaseDemand.on(PhaseDemand.worst(s.subject(), set), set))
                    .isMoreThan(PhaseDemand.limit(s));
            }, "a phase is loaded beyond its part of the set already");
    }
}
