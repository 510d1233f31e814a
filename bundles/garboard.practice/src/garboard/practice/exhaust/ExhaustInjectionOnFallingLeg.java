// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.RISER__INJECTION_ON_FALLING_LEG;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Riser;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The water enters behind the crest of the riser, where it can only run away from the engine. */
final class ExhaustInjectionOnFallingLeg {

    private ExhaustInjectionOnFallingLeg() {
    }

    static Check<Riser> check() {
        return Check.check("EXHAUST-INJECTION-FALLING-LEG", Riser.class)
            .title("Water is injected behind the crest of the riser")
            .why("Water that enters before the crest runs back to the exhaust valves as soon as the gas stops pushing it.")
            .basis(Sources.TRADE_PRESS)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("injection on the leg that falls away from the engine")
            .applies(Conditions.asked(RISER__INJECTION_ON_FALLING_LEG))
            .needs(RISER__INJECTION_ON_FALLING_LEG)
            .holds(s -> Answers.yes(s.subject().getInjectionOnFallingLeg(), "the water enters on the falling leg",
                "the water enters before the crest"))
            .remedy("Fit an elbow that injects the water behind its crest")
            .build();
    }
}
