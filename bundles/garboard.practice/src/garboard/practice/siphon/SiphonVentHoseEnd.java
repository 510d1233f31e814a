// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_HOSE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.SiphonBreak;
import garboard.practice.Sources;

/** A vent hose ends overboard or in the cockpit: in the bilge its end drowns in bilge water, and it takes in water in place of air. */
final class SiphonVentHoseEnd {

    private SiphonVentHoseEnd() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-VENT-HOSE-END", SiphonBreak.class)
            .title("Vent hose does not end in the bilge")
            .why("An end in the bilge goes under with the bilge water; the loop then draws that water into the engine.")
            .basis(Sources.TRADE_PRESS_2021)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("end at a topside fitting or in the cockpit, never in the bilge")
            .applies(SiphonConditions.breakFitted())
            .applies(SiphonConditions.ventHoseFitted())
            .needs(SIPHON_BREAK__VENT_HOSE)
            .holds(SiphonVentHoseEnd::compare)
            .remedy("Lead the vent hose to a topside fitting or into the cockpit, above the inclined waterline")
            .build();
    }

    private static Comparison compare(Situation<SiphonBreak> s) {
        return switch (s.subject().getVentHose()) {
            case BILGE -> Comparison.holds("the vent hose ends in the bilge", false);
            case OVERBOARD -> Comparison.holds("the vent hose ends overboard", true);
            default -> Comparison.holds("the vent hose ends in the cockpit", true);
        };
    }
}
