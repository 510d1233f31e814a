// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__KIND;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.SiphonBreak;
import garboard.model.SiphonBreakKind;

/** A loop has a vent at its top: without one it is a siphon, however high it stands. */
final class SiphonLoopVented {

    private SiphonLoopVented() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-LOOP-VENTED", SiphonBreak.class)
            .title("Loop has a vent")
            .why("A full hose siphons over any loop that is lower than ten metres; only air let in at the top stops it.")
            .basis(Basis.derived("physics of the siphon: atmospheric pressure carries the water over a closed loop"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("a valve or an open bleed at the top of the loop")
            .applies(SiphonConditions.loopFitted())
            .needs(SIPHON_BREAK__KIND)
            .holds(s -> {
                boolean vented = s.subject().getKind() != SiphonBreakKind.LOOP_WITHOUT_VENT;
                return Comparison.holds(vented ? "the loop has a vent" : "the loop has no vent", vented);
            })
            .remedy("Fit a vent to the top of the loop")
            .build();
    }
}
