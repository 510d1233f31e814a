// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__BULKHEADS_SEALED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Where the exhaust passes a bulkhead, the bulkhead is as tight as without it. */
final class ExhaustBulkheadsSealed {

    private ExhaustBulkheadsSealed() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-BULKHEADS-SEALED", ExhaustRun.class)
            .title("Bulkheads are tight round the exhaust")
            .why("An open hole round the pipe lets gas, fire and water pass from one space to the next.")
            .basis(Sources.cfr46FromMemory("182.430"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("tightness of each bulkhead kept; glands of dry pipes packed with what does not burn")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.asked(EXHAUST_RUN__BULKHEADS_SEALED))
            .needs(EXHAUST_RUN__BULKHEADS_SEALED)
            .holds(s -> Answers.yes(s.subject().getBulkheadsSealed(), "the bulkheads are tight",
                "a bulkhead is open round the exhaust"))
            .remedy("Seal the passage; round a dry pipe with packing that does not burn")
            .build();
    }
}
