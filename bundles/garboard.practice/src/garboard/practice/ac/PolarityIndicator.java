// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__POLARITY_INDICATOR;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** ISO 13297 6.10: an indicator where the boat's equipment needs fixed polarity. */
final class PolarityIndicator {

    private PolarityIndicator() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-POLARITY-INDICATOR", AcOutput.class)
            .title("Indicator shows crossed polarity")
            .why("A dock that is wired the wrong way round makes the boat's neutral live.")
            .basis(Sources.ISO_13297_6_10)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("an indicator where equipment needs fixed polarity; not with double-pole unpolarised systems or isolation transformers")
            .applies(AcConditions.scopeOfIso13297())
            .applies(Conditions.asked(AC_OUTPUT__POLARITY_INDICATOR))
            .needs(AC_OUTPUT__POLARITY_INDICATOR)
            .holds(s -> Answers.yes(s.subject().getPolarityIndicator(), "an indicator shows crossed polarity", "nothing shows crossed polarity"))
            .remedy("Fit a polarity indicator at the panel, or switch every circuit double pole")
            .build();
    }
}
