// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__INJECTION;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.MakerLimits;
import garboard.model.RawWaterCircuit;
import garboard.physics.rawwater.SiphonBreakNeed;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** Between the height that needs a siphon break and this one, a careful installer still fits one. */
final class SiphonInjectionHeightAdvised {

    private SiphonInjectionHeightAdvised() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("SIPHON-INJECTION-HEIGHT-ADVISED", RawWaterCircuit.class)
            .title("Injection without a siphon break has height in reserve")
            .why("Stores, fuel and people put the boat deeper than the waterline that was measured; a vented loop costs little beside an engine.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("at least 300 mm (12 in) above the loaded waterline where no siphon break is fitted and the maker names no height")
            .applies(SiphonConditions.noBreakFitted())
            .applies(Makers.silent(MakerLimits::getSiphonBreakNeededBelow, "the maker names the height below which a break is needed"))
            .applies(SteppingBack.where(SiphonInjectionHeight.check()))
            .applies(SteppingBack.where(SiphonInjectionHeightHeeled.check()))
            .needs(path(RAW_WATER_CIRCUIT__INJECTION, POINT__Z))
            .uses(MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW)
            .holds(s -> Comparison.atLeast("no siphon break is fitted and the injection lies " + DesignAttitude.heightInWords(height(s)),
                height(s), Limit.of(SiphonBreakNeed.UPRIGHT_ADVISED_BELOW, "common practice")))
            .remedy("Put in a vented loop all the same, or lift the injection", SiphonInjectionHeightAdvised::raise)
            .build();
    }

    private static Length height(Situation<RawWaterCircuit> s) {
        return s.subject().getInjection().getZ();
    }

    private static Optional<Remedy> raise(Situation<RawWaterCircuit> s) {
        Length enough = Rounding.up(SiphonBreakNeed.UPRIGHT_ADVISED_BELOW, 10, "mm");
        return Optional.of(Remedy.of("Put in a vented loop all the same, or lift the injection to " + Figures.both(enough)
            + " above the waterline").setting(s.subject().getInjection(), POINT__Z, enough));
    }
}
