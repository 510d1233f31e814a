// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PICK_UP_SCREEN;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** There is no screen on the pick-up inside the tank. */
final class NoScreenInTank {

    private NoScreenInTank() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-PICK-UP-SCREEN", FuelSupply.class)
            .title("No screen inside the tank")
            .why("A screen that clogs in the tank cannot be seen or cleaned; that is what the separator is for.")
            .basis(Sources.GERR)
            .gravity(Gravity.DEFECT)
            .limit("no screen on the pick-up")
            .applies(Conditions.asked(FUEL_SUPPLY__PICK_UP_SCREEN))
            .needs(FUEL_SUPPLY__PICK_UP_SCREEN)
            .holds(s -> Answers.no(s.subject().getPickUpScreen(), "the pick-up has no screen",
                "the pick-up has a screen inside the tank"))
            .remedy("Take the screen off")
            .build();
    }
}
