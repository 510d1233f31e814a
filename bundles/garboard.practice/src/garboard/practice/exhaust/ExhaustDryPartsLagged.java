// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__DRY_PARTS_LAGGED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** What lies between manifold and injection is jacketed or lagged. */
final class ExhaustDryPartsLagged {

    private ExhaustDryPartsLagged() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-DRY-PARTS-LAGGED", ExhaustRun.class)
            .title("Exhaust before the injection is jacketed or lagged")
            .why("Bare metal at gas temperature burns whoever touches it and sets fire to what lies near.")
            .basis(Sources.cfr46("182.425(b)(3)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("water jacket or lagging from the manifold to the injection")
            .applies(Conditions.smallPassengerVessel())
            .needs(EXHAUST_RUN__DRY_PARTS_LAGGED)
            .holds(s -> Answers.demanded(s.subject().getDryPartsLagged(), "the dry parts are jacketed or lagged",
                "dry parts are bare"))
            .remedy("Lag the dry parts")
            .build();
    }
}
