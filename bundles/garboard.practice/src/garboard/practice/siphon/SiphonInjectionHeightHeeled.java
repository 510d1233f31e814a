// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__INJECTION;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_HEEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_ROLL;
import static garboard.model.GarboardPackage.Literals.VESSEL__SINKAGE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Point;
import garboard.model.RawWaterCircuit;
import garboard.physics.rawwater.SiphonBreakNeed;
import garboard.practice.Clearance;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** Without a siphon break the injection stays clear of the water at every design attitude: heel starts a siphon as well as depth. */
final class SiphonInjectionHeightHeeled {

    private SiphonInjectionHeightHeeled() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("SIPHON-INJECTION-HEIGHT-HEELED", RawWaterCircuit.class)
            .title("Injection without a siphon break stays clear of the inclined waterline")
            .why("A few hours on one tack with the injection near the water are enough for the sea to find its way into the cylinders.")
            .basis(Basis.commonPractice().othersSay("150, 200, 230 and 300 mm (6, 8, 9 and 12 in) are in use"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least 150 mm (6 in) above the water at every design attitude where no siphon break is fitted")
            .applies(SiphonConditions.noBreakFitted())
            .needs(Clearance.inputs(RAW_WATER_CIRCUIT__INJECTION))
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(VESSEL__SINKAGE)
            .holds(s -> {
                Clearance clearance = Clearance.atWorst(s.subject().getInjection(), s.vessel());
                return Comparison.atLeast("no siphon break is fitted and the injection lies " + clearance.inWords(), clearance.height(),
                    Limit.of(SiphonBreakNeed.HEELED_NEEDED_BELOW, "common practice"));
            })
            .remedy("Fit a vented loop between heat exchanger and injection, or raise the injection", SiphonInjectionHeightHeeled::raise)
            .build();
    }

    private static Optional<Remedy> raise(Situation<RawWaterCircuit> s) {
        Point injection = s.subject().getInjection();
        Length enough = Clearance.heightToBuild(injection, Clearance.envelope(s.vessel()),
            SiphonBreakNeed.HEELED_NEEDED_BELOW);
        return Optional.of(Remedy.of("Fit a vented loop between heat exchanger and injection, or raise the injection to "
            + Figures.both(enough) + " above the waterline").setting(injection, POINT__Z, enough));
    }
}
