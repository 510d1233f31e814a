// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__GAS_TIGHT;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** No exhaust gas leaks into the boat. */
final class ExhaustGasTight {

    private ExhaustGasTight() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-GAS-TIGHT", ExhaustRun.class)
            .title("Exhaust is gas-tight")
            .why("Carbon monoxide from a leak collects in cabins and kills sleepers.")
            .basis(Sources.ABYC_P_1)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("no leak: no soot, no water tracks, smoke test passed")
            .applies(Conditions.unlessLawForPassengers("182.430"))
            .applies(Conditions.asked(EXHAUST_RUN__GAS_TIGHT))
            .needs(EXHAUST_RUN__GAS_TIGHT)
            .holds(s -> Answers.yes(s.subject().getGasTight(), "no leak was found",
                "a leak was found"))
            .remedy("Do not run the set until the leak is mended, then test with smoke")
            .build();
    }
}
