// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.SEPARATOR_DRAIN__OWN_SEACOCK;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.SeparatorDrain;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The drain of the separator leaves the hull through a seacock of its own. */
final class ExhaustSeparatorDrainSeacock {

    private ExhaustSeparatorDrainSeacock() {
    }

    static Check<SeparatorDrain> check() {
        return Check.check("EXHAUST-SEPARATOR-DRAIN-SEACOCK", SeparatorDrain.class)
            .title("Drain of the separator has its own seacock")
            .why("A split drain hose without a valve lets the sea in as fast as any other open hose.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("a seacock for the drain alone")
            .applies(ExhaustConditions.separatorFitted())
            .applies(Conditions.asked(SEPARATOR_DRAIN__OWN_SEACOCK))
            .needs(SEPARATOR_DRAIN__OWN_SEACOCK)
            .holds(s -> Answers.yes(s.subject().getOwnSeacock(), "the drain has its own seacock",
                "the drain has no seacock of its own"))
            .remedy("Fit a seacock for the drain")
            .build();
    }
}
