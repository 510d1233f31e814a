// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__LOWEST_POINT;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Muffler;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The lift muffler is the lowest place of the exhaust: all water in it runs there and nowhere else. */
final class ExhaustMufflerLowest {

    private ExhaustMufflerLowest() {
    }

    static Check<Muffler> check() {
        return Check.check("EXHAUST-MUFFLER-LOWEST", Muffler.class)
            .title("Lift muffler is the lowest place of the exhaust")
            .why("Water that finds a lower place than the muffler stands in the hose and blocks the gas, or finds the engine.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("no part of the run lower than the muffler")
            .applies(ExhaustConditions.liftMuffler())
            .applies(Conditions.asked(MUFFLER__LOWEST_POINT))
            .needs(MUFFLER__LOWEST_POINT)
            .holds(s -> Answers.yes(s.subject().getLowestPoint(), "the muffler is the lowest place of the run",
                "part of the run lies lower than the muffler"))
            .remedy("Lower the muffler, or re-hang the run so that it falls to it")
            .build();
    }
}
