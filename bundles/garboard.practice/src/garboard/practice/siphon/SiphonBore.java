// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__BORE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.SiphonBreak;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** The loop is as wide as the hose it sits in. */
final class SiphonBore {

    private SiphonBore() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-BORE", SiphonBreak.class)
            .title("Siphon break is as wide as its hose")
            .why("A narrow loop throttles the cooling water of the whole set.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("at least the bore of the raw-water hose that leads to it")
            .applies(SiphonConditions.loopFitted())
            .needs(path(SIPHON_BREAK__BORE), path(RAW_WATER_CIRCUIT__SIPHON_BREAK_HOSE_BORE))
            .holds(s -> Comparison.atLeast("the loop has a bore of " + Figures.both(s.subject().getBore()) + ", its hose "
                + Figures.both(hoseBore(s)), s.subject().getBore(), Limit.of(hoseBore(s), "bore of the hose")))
            .remedy("Fit a loop of the hose's bore", SiphonBore::widen)
            .build();
    }

    private static Optional<Remedy> widen(Situation<SiphonBreak> s) {
        Length wide = Rounding.up(hoseBore(s), 0.1, "mm");
        return Optional.of(Remedy.of("Fit a loop with a bore of " + Figures.both(wide)).setting(s.subject(), SIPHON_BREAK__BORE, wide));
    }

    private static Length hoseBore(Situation<SiphonBreak> s) {
        return s.record().getRawWater().getSiphonBreakHoseBore();
    }
}
