// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEST_TAP_FITTED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** A gauge can be put to the exhaust without taking it apart. */
final class ExhaustTestTap {

    private ExhaustTestTap() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-TEST-TAP", ExhaustRun.class)
            .title("Exhaust has a tap for the gauge")
            .why("What cannot be measured is guessed, at the trial and each year after it.")
            .basis(Sources.GERR)
            .gravity(Gravity.ADVICE)
            .limit("a tap with a plug on the riser, before the injection")
            .applies(Conditions.asked(EXHAUST_RUN__TEST_TAP_FITTED))
            .needs(EXHAUST_RUN__TEST_TAP_FITTED)
            .holds(s -> Answers.yes(s.subject().getTestTapFitted(), "a tap is fitted",
                "no tap is fitted"))
            .remedy("Fit a tap with a plug to the riser, before the injection")
            .build();
    }
}
