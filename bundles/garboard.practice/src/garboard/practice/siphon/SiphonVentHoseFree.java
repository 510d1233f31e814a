// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_HOSE_FREE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.SiphonBreak;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Nothing closes the vent hose: no kink, no low pocket in which water stands. */
final class SiphonVentHoseFree {

    private SiphonVentHoseFree() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-VENT-HOSE-FREE", SiphonBreak.class)
            .title("Vent hose is free")
            .why("A kink, or water standing in a low pocket, keeps the air out as surely as a stuck valve.")
            .basis(Sources.TRADE_PRESS_2021)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("open from end to end: not kinked, and without a dip in which water stands")
            .applies(SiphonConditions.breakFitted())
            .applies(SiphonConditions.ventHoseFitted())
            .applies(Conditions.asked(SIPHON_BREAK__VENT_HOSE_FREE))
            .needs(SIPHON_BREAK__VENT_HOSE_FREE)
            .holds(s -> Answers.yes(s.subject().getVentHoseFree(), "the vent hose is free",
                "the vent hose has a kink or a pocket that holds water"))
            .remedy("Re-route the vent hose so that it falls or climbs all the way, in hose that cannot kink")
            .build();
    }
}
