// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Hot exhaust parts keep clear of what burns, and are insulated from it. */
final class ExhaustClearOfCombustibles {

    private ExhaustClearOfCombustibles() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-CLEAR-OF-COMBUSTIBLES", ExhaustRun.class)
            .title("Exhaust keeps clear of what burns")
            .why("Wood chars and lights at temperatures far below that of a dry exhaust.")
            .basis(Sources.cfr46("177.405(b)").othersSay("no distance is given; for towing vessels 46 CFR 144.415 names 450 mm (18 in)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("clear of combustible material and insulated; the section gives no distance")
            .applies(Conditions.smallPassengerVessel())
            .needs(EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES)
            .holds(s -> Answers.demanded(s.subject().getClearOfCombustibles(), "the exhaust is clear of what burns",
                "something that burns lies close to the exhaust"))
            .remedy("Move it away, or insulate it with what does not burn")
            .build();
    }
}
