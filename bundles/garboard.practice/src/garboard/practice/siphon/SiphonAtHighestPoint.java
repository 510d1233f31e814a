// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__HIGHEST_POINT;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.SiphonBreak;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The vent is the highest point of the raw-water line: air rises to the top, and only there it parts the water. */
final class SiphonAtHighestPoint {

    private SiphonAtHighestPoint() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-HIGHEST-POINT", SiphonBreak.class)
            .title("Vent is the highest point of the raw-water line")
            .why("Where the hose climbs on behind the vent, water stands over it; the column does not part and the siphon runs on.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("no part of the raw-water line higher than the vent")
            .applies(SiphonConditions.loopFitted())
            .applies(Conditions.asked(SIPHON_BREAK__HIGHEST_POINT))
            .needs(SIPHON_BREAK__HIGHEST_POINT)
            .holds(s -> Answers.yes(s.subject().getHighestPoint(), "the vent is the highest point of the line",
                "part of the raw-water line lies higher than the vent"))
            .remedy("Re-hang the hoses so that they fall from the vent to both sides")
            .build();
    }
}
