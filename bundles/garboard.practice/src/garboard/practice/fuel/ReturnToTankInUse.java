// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__RETURN_TO_TANK_IN_USE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The return goes to the tank that feeds. */
final class ReturnToTankInUse {

    private ReturnToTankInUse() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-RETURN-TANK", FuelSupply.class)
            .title("Return fuel goes to the tank in use")
            .why("A return to another tank overfills it while the one in use runs dry.")
            .basis(Sources.GERR)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("feed and return valves move together")
            .applies(Conditions.asked(FUEL_SUPPLY__RETURN_TO_TANK_IN_USE))
            .needs(FUEL_SUPPLY__RETURN_TO_TANK_IN_USE)
            .holds(s -> Answers.yes(s.subject().getReturnToTankInUse(), "the return goes to the tank in use",
                "the return may go to another tank than the one in use"))
            .remedy("Couple feed and return valves, or lead the return to the one tank")
            .build();
    }
}
