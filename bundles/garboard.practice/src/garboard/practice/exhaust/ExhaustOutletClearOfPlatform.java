// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__UNDER_SWIM_PLATFORM;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustOutlet;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The outlet does not lie under a swim platform, where gas collects round whoever is in the water. */
final class ExhaustOutletClearOfPlatform {

    private ExhaustOutletClearOfPlatform() {
    }

    static Check<ExhaustOutlet> check() {
        return Check.check("EXHAUST-OUTLET-PLATFORM", ExhaustOutlet.class)
            .title("Outlet does not lie under a swim platform")
            .why("Carbon monoxide collects under the platform; swimmers have died there beside a running set.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("not under a swim platform")
            .applies(Conditions.asked(EXHAUST_OUTLET__UNDER_SWIM_PLATFORM))
            .needs(EXHAUST_OUTLET__UNDER_SWIM_PLATFORM)
            .holds(s -> Answers.no(s.subject().getUnderSwimPlatform(), "the outlet lies clear of a swim platform",
                "the outlet lies under a swim platform"))
            .remedy("Move the outlet; until then nobody swims while the set runs")
            .build();
    }
}
