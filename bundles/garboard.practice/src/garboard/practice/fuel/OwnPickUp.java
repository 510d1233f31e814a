// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__OWN_PICK_UP;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The set has its own pick-up in the tank. */
final class OwnPickUp {

    private OwnPickUp() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-OWN-PICK-UP", FuelSupply.class)
            .title("Set has its own pick-up in the tank")
            .why("The main engine's pump draws the set's line empty through a shared tube.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("a dip tube that is not shared with a main engine")
            .applies(Conditions.asked(FUEL_SUPPLY__OWN_PICK_UP))
            .needs(FUEL_SUPPLY__OWN_PICK_UP)
            .holds(s -> Answers.yes(s.subject().getOwnPickUp(), "the set has its own pick-up",
                "the set shares its pick-up"))
            .remedy("Fit a dip tube for the set")
            .build();
    }
}
