// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Sources;

/** 33 CFR 183.566: the fuel pump is on the engine or within 12 in of it, or in the tank. */
final class PumpCloseToEngineByLaw {

    private PumpCloseToEngineByLaw() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-PUMP-PLACE-183-566", FuelSupply.class)
            .title("Fuel pump is at the engine or in the tank")
            .why("A pump midway puts a long line of gasoline under pressure.")
            .basis(Sources.cfr33FromMemory("183.566"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("on the engine, within 12 in (305 mm) of it, or inside the tank")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_SUPPLY__PUMP_WITHIN_REACH_OF_ENGINE)
            .holds(s -> Answers.demanded(s.subject().getPumpWithinReachOfEngine(), "the pump is at the engine or in the tank",
                "the pump is more than 12 in from the engine"))
            .remedy("Move the pump to the engine or into the tank")
            .build();
    }
}
