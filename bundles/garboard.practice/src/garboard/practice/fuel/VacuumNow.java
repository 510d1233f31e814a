// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__VACUUM_AT_PUMP_NOW;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelSupply;
import garboard.practice.Figures;
import garboard.quantity.PressureDifference;

/** The vacuum at the fuel pump stays below what chokes any set, also where no clean reading is known. */
final class VacuumNow {

    private static final PressureDifference LIMIT = PressureDifference.of(7, "inHg");

    private VacuumNow() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-VACUUM-NOW", FuelSupply.class)
            .title("Fuel vacuum is not high")
            .why("At a high vacuum gas comes out of the fuel and the set loses power and stops.")
            .basis(Basis.commonPractice().othersSay("7 to 10 inHg (24 to 34 kPa) are in use"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 24 kPa (7 inHg)")
            .needs(FUEL_SUPPLY__VACUUM_AT_PUMP_NOW)
            .holds(s -> Comparison.atMost("the pump draws " + Figures.both(s.subject().getVacuumAtPumpNow()),
                s.subject().getVacuumAtPumpNow(), Limit.of(LIMIT, "common practice, the lower of two figures")))
            .remedy("Change the element, then look for a kinked line, a stuck anti-siphon valve or a blocked pick-up")
            .build();
    }
}
