// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__EARTHED_PARTS_BONDED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Metal cases are joined to ground, on any boat. */
final class PartsGrounded {

    private PartsGrounded() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-PARTS-GROUNDED", AcOutput.class)
            .title("Metal frames and cases are joined to ground")
            .why("A case that is joined to nothing stays live after a fault, until somebody touches it.")
            .basis(Sources.yardstick("46 CFR 183.372"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("every metal frame and case of the AC system")
            .applies(Conditions.unlessLawForPassengers("183.372"))
            .applies(Conditions.asked(AC_OUTPUT__EARTHED_PARTS_BONDED))
            .needs(AC_OUTPUT__EARTHED_PARTS_BONDED)
            .holds(s -> Answers.yes(s.subject().getEarthedPartsBonded(), "all metal cases are joined to ground",
                "a metal case is not joined to ground"))
            .remedy("Join each metal case to the ground bus")
            .build();
    }
}
