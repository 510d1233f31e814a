// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__INSIDE_BOTTOM;
import static garboard.model.GarboardPackage.Literals.POINT__Z;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustOutlet;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** An outlet that is meant to be dry lies above the loaded waterline. */
final class ExhaustOutletHeight {

    private static final Length LEAST = Length.of(50, "mm");

    private ExhaustOutletHeight() {
    }

    static Check<ExhaustOutlet> check() {
        return Check.check("EXHAUST-OUTLET-HEIGHT", ExhaustOutlet.class)
            .title("Outlet lies above the loaded waterline")
            .why("An outlet at the water's edge gurgles, raises the back pressure and lets each wave into the run.")
            .basis(Basis.commonPractice().othersSay("50 to 100 mm (2 to 4 in)"))
            .gravity(Gravity.DEFECT)
            .limit("inside bottom of the outlet at least 50 mm (2 in) above the loaded waterline")
            .applies(ExhaustConditions.outletMeantToBeDry())
            .needs(path(EXHAUST_OUTLET__INSIDE_BOTTOM, POINT__Z))
            .holds(s -> Comparison.atLeast("the inside bottom of the outlet lies " + DesignAttitude.heightInWords(height(s)), height(s),
                Limit.of(LEAST, "common practice")))
            .remedy("Move the outlet up, or to the transom", s -> Optional.of(Remedy.of("Move the outlet up until its inside bottom lies "
                + Figures.both(LEAST) + " above the waterline").setting(s.subject().getInsideBottom(), POINT__Z, LEAST)))
            .build();
    }

    private static Length height(Situation<ExhaustOutlet> s) {
        return s.subject().getInsideBottom().getZ();
    }
}
