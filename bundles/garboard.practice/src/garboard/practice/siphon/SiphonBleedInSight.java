// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__TELL_TALE_VISIBLE;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_HOSE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.SiphonBreak;
import garboard.model.VentHoseEnd;

/** The bleed of a valveless siphon break runs overboard where the crew sees it: its stream tells that it is not clogged. */
final class SiphonBleedInSight {

    private SiphonBleedInSight() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-BLEED-IN-SIGHT", SiphonBreak.class)
            .title("Bleed runs overboard where the crew sees it")
            .why("Nobody notices a clogged bleed that cannot be seen, and a clogged bleed breaks no siphon.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("led overboard above the waterline, stream in sight of the crew")
            .applies(SiphonConditions.bleed())
            .needs(SIPHON_BREAK__VENT_HOSE, SIPHON_BREAK__TELL_TALE_VISIBLE)
            .holds(SiphonBleedInSight::compare)
            .remedy("Lead the bleed overboard where its stream can be seen from deck, and add it to the start-up check")
            .build();
    }

    private static Comparison compare(Situation<SiphonBreak> s) {
        boolean overboard = s.subject().getVentHose() == VentHoseEnd.OVERBOARD;
        boolean seen = s.subject().getTellTaleVisible() == Answer.YES;
        return Comparison.holds((overboard ? "the bleed runs overboard" : "the bleed does not run overboard")
            + (seen ? ", in sight of the crew" : ", out of sight of the crew"), overboard && seen);
    }
}
