// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__RING_TERMINALS;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.CableRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Ring or captive terminals stay on their stud when the nut works loose. */
final class RingTerminals {

    private RingTerminals() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-RING-TERMINALS", CableRun.class)
            .title("Conductor ends in ring or captive terminals")
            .why("A fork or a push-on terminal slips off when its screw loosens, and falls where it shorts.")
            .basis(Sources.ABYC_E_11)
            .gravity(Gravity.DEFECT)
            .limit("ring terminals or captive fork terminals")
            .applies(Conditions.asked(CABLE_RUN__RING_TERMINALS))
            .needs(CABLE_RUN__RING_TERMINALS)
            .holds(s -> Answers.yes(s.subject().getRingTerminals(), "the conductor ends in ring or captive terminals", "a "
                + "terminal can slip off its stud"))
            .remedy("Crimp on ring terminals")
            .build();
    }
}
