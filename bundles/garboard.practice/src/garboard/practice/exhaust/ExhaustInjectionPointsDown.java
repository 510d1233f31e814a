// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.RISER__INJECTION_POINTS_DOWN;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Riser;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The injection points down the run and wets the hose all round. */
final class ExhaustInjectionPointsDown {

    private ExhaustInjectionPointsDown() {
    }

    static Check<Riser> check() {
        return Check.check("EXHAUST-INJECTION-POINTS-DOWN", Riser.class)
            .title("Injection points down the run")
            .why("A jet across or against the gas leaves a dry strip of hose that burns, and splashes back towards the valves.")
            .basis(Sources.TRADE_PRESS)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("pointing down the run, spray all round the bore")
            .applies(Conditions.asked(RISER__INJECTION_POINTS_DOWN))
            .needs(RISER__INJECTION_POINTS_DOWN)
            .holds(s -> Answers.yes(s.subject().getInjectionPointsDown(), "the injection points down the run",
                "the injection does not point down the run"))
            .remedy("Fit an elbow whose injection points down the run and sprays all round")
            .build();
    }
}
