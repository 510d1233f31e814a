// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.HullKind;
import garboard.model.HullPickUp;
import garboard.model.StrainerPickUp;
import garboard.practice.Sources;

/** The intake of a set does not face forward; one that faces aft only on a hull that never planes. */
final class PickUpDoesNotScoop {

    private PickUpDoesNotScoop() {
    }

    static Check<HullPickUp> check() {
        return Check.check("RAWWATER-PICK-UP-DIRECTION", HullPickUp.class)
            .title("Intake does not scoop")
            .why("A set stands still while the boat runs: a forward scoop then forces water through it and fills the cylinders"
                + " by way of the exhaust. At speed a scoop that faces aft sucks air.")
            .basis(Sources.TRADE_PRESS)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("flush or round intake; facing aft on displacement craft only; never facing forward")
            .needs(HULL_PICK_UP__KIND)
            .needsWhen(PickUpDoesNotScoop::facesAft, path(VESSEL__HULL_KIND))
            .holds(s -> switch (s.subject().getKind()) {
                case SCOOP_FACING_FORWARD -> Comparison.holds("the scoop faces forward", false);
                case SCOOP_FACING_AFT -> displacement(s.vessel().getHullKind())
                    ? Comparison.holds("the scoop faces aft, on a displacement hull", true)
                    : Comparison.holds("the scoop faces aft, on a hull that goes faster than a displacement hull", false);
                default -> Comparison.holds("the intake has no direction", true);
            })
            .remedy("Fit a flush or round strainer", s -> Optional.of(Remedy.of("Fit a flush or round strainer without direction")
                .setting(s.subject(), HULL_PICK_UP__KIND, StrainerPickUp.ROUND_NON_DIRECTIONAL)))
            .build();
    }

    private static boolean facesAft(Situation<HullPickUp> s) {
        return s.subject().getKind() == StrainerPickUp.SCOOP_FACING_AFT;
    }

    private static boolean displacement(HullKind kind) {
        return kind == HullKind.MOTOR_DISPLACEMENT || kind == HullKind.SAILING_MONOHULL || kind == HullKind.SAILING_MULTIHULL;
    }
}
