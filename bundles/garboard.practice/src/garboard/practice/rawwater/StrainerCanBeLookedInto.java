// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.WATER_STRAINER__SEE_THROUGH_OR_OPENABLE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.WaterStrainer;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The strainer can be looked into or opened afloat. */
final class StrainerCanBeLookedInto {

    private StrainerCanBeLookedInto() {
    }

    static Check<WaterStrainer> check() {
        return Check.check("RAWWATER-STRAINER-ACCESS", WaterStrainer.class)
            .title("Strainer can be looked into afloat")
            .why("Nobody cleans a strainer that has to come out of the boat first.")
            .basis(Basis.commonPractice().othersSay("a strainer below the waterline primes the pump; one with its lid above it"
                + " can be opened with the seacock open: both are accepted"))
            .gravity(Gravity.DEFECT)
            .limit("clear bowl, or a lid that can be opened afloat")
            .applies(Conditions.asked(WATER_STRAINER__SEE_THROUGH_OR_OPENABLE))
            .needs(WATER_STRAINER__SEE_THROUGH_OR_OPENABLE)
            .holds(s -> Answers.yes(s.subject().getSeeThroughOrOpenable(), "the strainer can be looked into afloat",
                "the strainer cannot be looked into afloat"))
            .remedy("Fit a strainer with a clear bowl or a lid that opens afloat")
            .build();
    }
}
