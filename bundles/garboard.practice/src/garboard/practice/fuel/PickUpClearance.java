// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PICK_UP_CLEARANCE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.FuelSupply;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** The pick-up tube ends clear of what settles on the bottom of the tank. */
final class PickUpClearance {

    private static final Length LIMIT = Length.of(25, "mm");

    private PickUpClearance() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-PICK-UP-CLEARANCE", FuelSupply.class)
            .title("Pick-up ends clear of the bottom of the tank")
            .why("Water and dirt settle there; a tube on the bottom drinks them first.")
            .basis(Sources.GERR)
            .gravity(Gravity.DEFECT)
            .limit("at least 25 mm (1 in) off the bottom")
            .needs(FUEL_SUPPLY__PICK_UP_CLEARANCE)
            .holds(s -> Comparison.atLeast("the pick-up ends " + Figures.both(s.subject().getPickUpClearance()) + " off the bottom",
                s.subject().getPickUpClearance(), Limit.of(LIMIT, "Gerr")))
            .remedy("Shorten the pick-up tube", s -> Optional.of(Remedy.of("Shorten the pick-up tube until it ends " + Figures.both(LIMIT)
                + " off the bottom").setting(s.subject(), FUEL_SUPPLY__PICK_UP_CLEARANCE, LIMIT)))
            .build();
    }
}
