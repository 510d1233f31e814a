// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__WEIGHT_ON_MANIFOLD;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Hose and muffler hang from the boat, not from the engine. */
final class ExhaustWeightOffManifold {

    private ExhaustWeightOffManifold() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-WEIGHT-OFF-MANIFOLD", ExhaustRun.class)
            .title("Manifold carries no weight of hose or muffler")
            .why("Weight that shakes with the engine cracks the elbow, the manifold or the flange of the turbine.")
            .basis(Sources.TRADE_PRESS)
            .gravity(Gravity.DEFECT)
            .limit("no weight of hose or muffler on manifold, elbow or turbine flange")
            .applies(Conditions.asked(EXHAUST_RUN__WEIGHT_ON_MANIFOLD))
            .needs(EXHAUST_RUN__WEIGHT_ON_MANIFOLD)
            .holds(s -> Answers.no(s.subject().getWeightOnManifold(), "the run is carried by the boat",
                "the manifold carries the weight of the run"))
            .remedy("Hang hose and muffler from the boat, with a flexible length next to the engine")
            .build();
    }
}
