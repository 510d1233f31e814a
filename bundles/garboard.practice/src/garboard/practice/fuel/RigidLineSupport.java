// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelSupply;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** A metal fuel line is clipped close to its flexible link. */
final class RigidLineSupport {

    private static final Length LIMIT = Length.of(4, "in");

    private RigidLineSupport() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-RIGID-LINE-SUPPORT", FuelSupply.class)
            .title("Metal fuel line is clipped beside its flexible link")
            .why("The free end of a metal line whips and cracks at the flare.")
            .basis(Sources.GERR)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a clip within 4 in (102 mm) of the joint")
            .applies(Conditions.unlessLawForGasoline("183.562"))
            .applies(FuelConditions.rigidLine())
            .needs(FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE)
            .holds(s -> compare(s, "Gerr"))
            .remedy("Clip the line beside the joint", RigidLineSupport::remedy)
            .build();
    }

    static Comparison compare(Situation<FuelSupply> s, String origin) {
        Length distance = s.subject().getRigidLineSupportDistance();
        return Comparison.atMost("the metal line is clipped " + Figures.both(distance) + " from the joint", distance,
            Limit.of(LIMIT, origin));
    }

    static Optional<Remedy> remedy(Situation<FuelSupply> s) {
        return Optional.of(Remedy.of("Clip the metal line within " + Figures.both(LIMIT) + " of the flexible link")
            .setting(s.subject(), FUEL_SUPPLY__RIGID_LINE_SUPPORT_DISTANCE, LIMIT));
    }
}
