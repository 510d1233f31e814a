// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_TANK__OPENINGS_AT_TOP;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelTank;
import garboard.practice.Answers;
import garboard.practice.Sources;

/** 33 CFR 183.518: all openings of the tank are at its top. */
final class TankOpeningsAtTopByLaw {

    private TankOpeningsAtTopByLaw() {
    }

    static Check<FuelTank> check() {
        return Check.check("FUEL-TANK-OPENINGS-183-518", FuelTank.class)
            .title("All tank openings are at the top")
            .why("A fitting in the side or bottom empties the tank when it fails.")
            .basis(Sources.cfr33("183.518"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("no opening lower than the highest surface of the tank")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_TANK__OPENINGS_AT_TOP)
            .holds(s -> Answers.demanded(s.subject().getOpeningsAtTop(), "all openings are at the top",
                "the tank has openings below its top"))
            .remedy("Close the low openings and draw from the top")
            .build();
    }
}
