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
import garboard.model.MakerLimits;
import garboard.model.RawWaterCircuit;
import garboard.physics.rawwater.SiphonBreakNeed;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** Without a siphon break the injection stands high above the loaded waterline: else the sea runs on through the stopped set. */
final class SiphonInjectionHeight {

    private SiphonInjectionHeight() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("SIPHON-INJECTION-HEIGHT", RawWaterCircuit.class)
            .title("Injection is high enough to do without a siphon break")
            .why("When the set stops, water goes on siphoning in past the pump, fills the muffler and then the cylinders.")
            .basis(Basis.commonPractice().othersSay("150, 200, 230 and 300 mm (6, 8, 9 and 12 in) are in use as the height below which "
                + "a break is needed; Gerr, ch. 7, asks for one whenever set and muffler lie below the waterline"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least 230 mm (9 in) above the loaded waterline where no siphon break is fitted, or the maker's height")
            .applies(SiphonConditions.noBreakFitted())
            .needs(path(RAW_WATER_CIRCUIT__INJECTION, POINT__Z))
            .uses(MAKER_LIMITS__SIPHON_BREAK_NEEDED_BELOW)
            .holds(s -> Comparison.atLeast("no siphon break is fitted and the injection lies "
                + DesignAttitude.heightInWords(height(s)), height(s), limit(s)))
            .remedy("Put a vented loop ahead of the injection, or lift the injection on a lagged dry riser",
                SiphonInjectionHeight::raise)
            .build();
    }

    private static Length height(Situation<RawWaterCircuit> s) {
        return s.subject().getInjection().getZ();
    }

    private static Limit<Length> limit(Situation<RawWaterCircuit> s) {
        return Limit.makerOr(s.maker(MakerLimits::getSiphonBreakNeededBelow), SiphonBreakNeed.UPRIGHT_NEEDED_BELOW, "common practice");
    }

    private static Optional<Remedy> raise(Situation<RawWaterCircuit> s) {
        Length enough = Rounding.up(limit(s).value(), 10, "mm");
        return Optional.of(Remedy.of("Put a vented loop ahead of the injection, or lift the injection to "
            + Figures.both(enough) + " above the waterline on a lagged dry riser").setting(s.subject().getInjection(), POINT__Z, enough));
    }
}
