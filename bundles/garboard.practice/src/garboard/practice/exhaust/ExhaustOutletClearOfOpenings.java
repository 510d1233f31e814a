// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__NEAR_OPENINGS;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustOutlet;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The outlet does not lie below or ahead of ports, hatches or air intakes. */
final class ExhaustOutletClearOfOpenings {

    private ExhaustOutletClearOfOpenings() {
    }

    static Check<ExhaustOutlet> check() {
        return Check.check("EXHAUST-OUTLET-OPENINGS", ExhaustOutlet.class)
            .title("Outlet keeps clear of openings into the boat")
            .why("Gas that rises along the hull comes in again through the nearest port or intake, with its carbon monoxide.")
            .basis(Basis.commonPractice().othersSay("no published distance was found; ABYC P-1 as quoted gives none"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("no port that opens, no hatch and no air intake above it or abaft of it")
            .applies(Conditions.asked(EXHAUST_OUTLET__NEAR_OPENINGS))
            .needs(EXHAUST_OUTLET__NEAR_OPENINGS)
            .holds(s -> Answers.no(s.subject().getNearOpenings(), "no opening lies near the outlet",
                "an opening lies near the outlet"))
            .remedy("Move the outlet, and see that each cabin has a working carbon monoxide alarm")
            .build();
    }
}
