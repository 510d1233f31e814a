// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__GAS_TIGHT;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The exhaust of a small passenger vessel is gas-tight. */
final class ExhaustGasTightByLaw {

    private ExhaustGasTightByLaw() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-GAS-TIGHT-BY-LAW", ExhaustRun.class)
            .title("Exhaust of a passenger vessel is gas-tight")
            .why("Carbon monoxide from a leak collects where passengers sit and sleep.")
            .basis(Sources.cfr46FromMemory("182.430"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("gas-tight throughout")
            .applies(Conditions.smallPassengerVessel())
            .needs(EXHAUST_RUN__GAS_TIGHT)
            .holds(s -> Answers.demanded(s.subject().getGasTight(), "no leak was found",
                "a leak was found"))
            .remedy("Do not run the set until the leak is mended, then test with smoke")
            .build();
    }
}
