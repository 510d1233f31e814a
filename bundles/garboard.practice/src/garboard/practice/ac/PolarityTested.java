// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__POLARITY_TESTED;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.TestResults;

/** Each outlet was tried: live, neutral and ground are where they belong. */
final class PolarityTested {

    private PolarityTested() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-POLARITY-TESTED", AcOutput.class)
            .title("Polarity was tested at every outlet")
            .why("With live and neutral crossed a switch leaves the appliance live, and a single-pole breaker opens the wrong conductor.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("live to neutral and live to ground show the rated voltage, neutral to ground at most 2 V under load")
            .needs(AC_OUTPUT__POLARITY_TESTED)
            .holds(s -> TestResults.passed(s.subject().getPolarityTested(), "polarity"))
            .remedy("Test every outlet from each source; correct the wiring at the side of the source")
            .build();
    }
}
