// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_SIZE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.CableRun;

/** The conductor's size is written the way it is printed on the jacket; a bare number could be either system. */
final class ConductorSizeReadable {

    private ConductorSizeReadable() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-SIZE", CableRun.class)
            .title("Conductor size is entered with its unit")
            .why("10 AWG is half of 10 mm2: a bare number is no size, and nothing that depends on it can be judged.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("as printed on the jacket: 10 AWG, 2/0 AWG, 70 mm2, 350 kcmil")
            .needs(CABLE_RUN__CONDUCTOR_SIZE)
            .holds(s -> CableRuns.hasReadableSize(s.subject()) ? Comparison.holds("the conductor is " + CableRuns.size(s.subject()), true)
                : Comparison.holds("\"" + s.subject().getConductorSize() + "\" is not a conductor size", false))
            .remedy("Read the size off the jacket and enter it with AWG, mm2 or kcmil")
            .build();
    }
}
