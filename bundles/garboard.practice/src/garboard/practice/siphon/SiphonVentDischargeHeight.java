// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_HOSE_END_HEIGHT;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.SiphonBreak;
import garboard.practice.Conditions;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.quantity.Length;

/**
 * The vent's opening in the hull lies so high that the law asks for no means of closing: lower, it would have to be closed, and a closed vent
 * breaks no siphon.
 */
final class SiphonVentDischargeHeight {

    private static final Length LEAST = Length.of(150, "mm");

    private SiphonVentDischargeHeight() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-VENT-DISCHARGE-HEIGHT", SiphonBreak.class)
            .title("Overboard end of the vent lies high enough to need no valve at the hull")
            .why("Lower down the law wants a valve at the hull, and with that valve shut the vent lets in no air.")
            .basis(Basis.derived("a vent that can be shut is no sure vent; 46 CFR 179.350(c) asks for a means of closing on lower openings"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least 150 mm (6 in) above the deepest load waterline; lower openings need a valve at the hull by law")
            .applies(Conditions.smallPassengerVessel())
            .applies(SiphonConditions.breakFitted())
            .applies(SiphonConditions.ventedOverboard())
            .needs(SIPHON_BREAK__VENT_HOSE_END_HEIGHT)
            .holds(s -> Comparison.atLeast("the vent leaves the hull " + DesignAttitude.heightInWords(height(s)), height(s),
                Limit.of(LEAST, "line of 46 CFR 179.350(c)")))
            .remedy("Move the opening higher", s -> Optional.of(Remedy.of("Move the opening to " + Figures.both(LEAST)
                + " above the deepest load waterline or higher").setting(s.subject(), SIPHON_BREAK__VENT_HOSE_END_HEIGHT, LEAST)))
            .build();
    }

    private static Length height(Situation<SiphonBreak> s) {
        return s.subject().getVentHoseEndHeight();
    }
}
