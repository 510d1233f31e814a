// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Muffler;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** After the set has stopped, the water in the muffler stands below its inlet: seen, not reckoned. */
final class ExhaustMufflerLevelAfterStop {

    private ExhaustMufflerLevelAfterStop() {
    }

    static Check<Muffler> check() {
        return Check.check("EXHAUST-MUFFLER-LEVEL", Muffler.class)
            .title("Water in the muffler stands below its inlet after a stop")
            .why("Water at the inlet is one roll away from the hose to the engine.")
            .basis(Basis.derived("the inlet is where the muffler spills towards the engine"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("level below the inlet ten minutes after stopping, upright and heeled")
            .applies(ExhaustConditions.mufflerFitted())
            .applies(Conditions.asked(MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET))
            .needs(MUFFLER__LEVEL_AFTER_STOP_BELOW_INLET)
            .holds(s -> Answers.yes(s.subject().getLevelAfterStopBelowInlet(), "the level was seen below the inlet",
                "the level stood at the inlet or above"))
            .remedy("Shorten what drains back, lower the crest or fit a larger muffler, then look again")
            .build();
    }
}
