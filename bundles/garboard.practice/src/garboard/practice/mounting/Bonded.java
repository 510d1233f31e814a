// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__BONDED_TO_COMMON_GROUND;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Mounting;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The frame of the set is joined to the common ground. */
final class Bonded {

    private Bonded() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-BONDED", Mounting.class)
            .title("Set is bonded to the common ground")
            .why("A frame that floats becomes live in a fault, and corrodes what it touches.")
            .basis(Sources.ABYC_E_11)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("frame of the set, AC ground bus and DC negative or engine joined")
            .applies(Conditions.asked(MOUNTING__BONDED_TO_COMMON_GROUND))
            .needs(MOUNTING__BONDED_TO_COMMON_GROUND)
            .holds(s -> Answers.yes(s.subject().getBondedToCommonGround(), "the set is bonded to the common ground",
                "the set is not bonded to the common ground"))
            .remedy("Join the frame to the common ground point by a conductor of at least 8 AWG (10 mm2)")
            .build();
    }
}
