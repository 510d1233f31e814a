// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__ABOVE_ELECTRICS;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__DRIP_SHIELD;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.SiphonBreak;
import garboard.practice.Conditions;

/** The vent does not weep salt water on alternator, control box or starter. */
final class SiphonNotAboveElectrics {

    private SiphonNotAboveElectrics() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-NOT-ABOVE-ELECTRICS", SiphonBreak.class)
            .title("Siphon break does not weep on electrical parts")
            .why("A tired valve weeps salt water; above an alternator or a control box that is a short circuit in the making.")
            .basis(Basis.commonPractice().othersSay("that valves weep is reported in the trade press"))
            .gravity(Gravity.DEFECT)
            .limit("no alternator, starter or control box under it, unless a shield keeps the drips off")
            .applies(SiphonConditions.breakFitted())
            .applies(Conditions.asked(SIPHON_BREAK__ABOVE_ELECTRICS))
            .needs(SIPHON_BREAK__ABOVE_ELECTRICS)
            .needsWhen(SiphonNotAboveElectrics::isAbove, path(SIPHON_BREAK__DRIP_SHIELD))
            .holds(SiphonNotAboveElectrics::compare)
            .remedy("Move the loop aside, or fit a drip shield under the vent")
            .build();
    }

    private static boolean isAbove(Situation<SiphonBreak> s) {
        return s.subject().getAboveElectrics() == Answer.YES;
    }

    private static Comparison compare(Situation<SiphonBreak> s) {
        if (!isAbove(s)) {
            return Comparison.holds("no electrical part lies under the vent", true);
        }
        boolean shielded = s.subject().getDripShield() == Answer.YES;
        return Comparison.holds("electrical parts lie under the vent, " + (shielded ? "with a drip shield between" : "without a drip shield"),
            shielded);
    }
}
