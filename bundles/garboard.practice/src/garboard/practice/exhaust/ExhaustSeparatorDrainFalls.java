// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.SEPARATOR_DRAIN__FALLS_ALL_THE_WAY;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.SeparatorDrain;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The drain of the separator falls all the way: no gas pressure lifts the water in it. */
final class ExhaustSeparatorDrainFalls {

    private ExhaustSeparatorDrainFalls() {
    }

    static Check<SeparatorDrain> check() {
        return Check.check("EXHAUST-SEPARATOR-DRAIN-FALLS", SeparatorDrain.class)
            .title("Drain of the separator falls all the way")
            .why("In a low pocket of the drain water stands until it backs up into the separator and goes out with the gas.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("falling from the separator to the hull, without a lift")
            .applies(ExhaustConditions.separatorFitted())
            .applies(Conditions.asked(SEPARATOR_DRAIN__FALLS_ALL_THE_WAY))
            .needs(SEPARATOR_DRAIN__FALLS_ALL_THE_WAY)
            .holds(s -> Answers.yes(s.subject().getFallsAllTheWay(), "the drain falls all the way",
                "the drain has a lift or a pocket"))
            .remedy("Re-hang the drain so that it falls all the way")
            .build();
    }
}
