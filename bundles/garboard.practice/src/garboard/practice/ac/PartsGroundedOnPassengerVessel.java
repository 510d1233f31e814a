// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__EARTHED_PARTS_BONDED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.372: metal frames and enclosures are grounded. */
final class PartsGroundedOnPassengerVessel {

    private PartsGroundedOnPassengerVessel() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-PARTS-GROUNDED-183-372", AcOutput.class)
            .title("Metal frames and cases are grounded (small passenger vessels)")
            .why("A case that is joined to nothing stays live after a fault, until a passenger touches it.")
            .basis(Sources.cfr46("183.372"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("every metal frame and case of the AC system")
            .applies(Conditions.smallPassengerVessel())
            .needs(AC_OUTPUT__EARTHED_PARTS_BONDED)
            .holds(s -> Answers.demanded(s.subject().getEarthedPartsBonded(), "all metal cases are grounded", "a metal case is not grounded"))
            .remedy("Join each metal case to the ground bus")
            .build();
    }
}
