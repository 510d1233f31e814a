// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__DRAIN_PLUG;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Muffler;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The muffler can be drained where it stands, after long cranking and before winter. */
final class ExhaustMufflerDrainPlug {

    private ExhaustMufflerDrainPlug() {
    }

    static Check<Muffler> check() {
        return Check.check("EXHAUST-MUFFLER-DRAIN", Muffler.class)
            .title("Muffler has a drain plug")
            .why("Without a drain nobody empties the muffler after cranking, and the next try may push its water into the engine.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("a plug at the lowest place, within reach")
            .applies(ExhaustConditions.mufflerFitted())
            .applies(Conditions.asked(MUFFLER__DRAIN_PLUG))
            .needs(MUFFLER__DRAIN_PLUG)
            .holds(s -> Answers.yes(s.subject().getDrainPlug(), "the muffler has a drain plug",
                "the muffler has no drain plug"))
            .remedy("Fit a drain plug at the lowest place of the muffler")
            .build();
    }
}
