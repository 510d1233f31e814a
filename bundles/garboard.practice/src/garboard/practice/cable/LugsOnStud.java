// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__LUGS_ON_STUD;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.CableRun;
import garboard.practice.Sources;

/** At most four lugs on one stud. */
final class LugsOnStud {

    private static final int MOST = 4;

    private LugsOnStud() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-LUGS", CableRun.class)
            .title("No stud carries more than four lugs")
            .why("A stack of lugs works loose; the upper ones get warm and the nut has no thread left.")
            .basis(Sources.ABYC_E_11)
            .gravity(Gravity.DEFECT)
            .limit("at most four on one stud, the largest first")
            .needs(CABLE_RUN__LUGS_ON_STUD)
            .holds(s -> Comparison.holds("the stud carries " + s.subject().getLugsOnStud() + (s.subject().getLugsOnStud() == 1 ? " lug" : " lugs"),
                s.subject().getLugsOnStud() <= MOST))
            .remedy("Fit a busbar and move lugs to it until four are left", s -> Optional.of(
                Remedy.of("Fit a busbar and move " + (s.subject().getLugsOnStud() - MOST) + " of the lugs to it")
                    .setting(s.subject(), CABLE_RUN__LUGS_ON_STUD, MOST)))
            .build();
    }
}
