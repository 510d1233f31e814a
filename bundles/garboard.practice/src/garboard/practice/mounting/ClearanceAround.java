// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__CLEARANCE_AROUND;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.Mounting;
import garboard.practice.Figures;
import garboard.quantity.Length;

/** The set touches nothing when it moves on its mounts. */
final class ClearanceAround {

    private static final Length NONE = Length.of(0, "mm");

    private ClearanceAround() {
    }

    static Check<Mounting> check() {
        return Check.check("MOUNTING-CLEARANCE", Mounting.class)
            .title("Set touches nothing when it rocks")
            .why("What the set strikes it wears through: hoses, wires, and in the end itself.")
            .basis(Basis.derived("two things that touch wear each other").othersSay("no published figure was found; the maker's drawing goes before it"))
            .gravity(Gravity.DEFECT)
            .limit("more than 0 at the narrowest place, with the set rocked by hand")
            .needs(MOUNTING__CLEARANCE_AROUND)
            .holds(s -> Comparison.moreThan("the narrowest gap is " + Figures.both(s.subject().getClearanceAround()), s.subject().getClearanceAround(),
                Limit.of(NONE, "nothing may touch")))
            .remedy("Move what is in the way, or the set")
            .build();
    }
}
