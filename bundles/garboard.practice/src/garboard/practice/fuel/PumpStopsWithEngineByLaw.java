// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Sources;

/** 33 CFR 183.524: the electric fuel pump runs only while the engine runs or is being started. */
final class PumpStopsWithEngineByLaw {

    private PumpStopsWithEngineByLaw() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-PUMP-STOPS-183-524", FuelSupply.class)
            .title("Electric fuel pump stops with the engine")
            .why("A pump that goes on after the engine has stopped feeds a fire or fills the bilge through a broken line.")
            .basis(Sources.cfr33("183.524"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("pumps nothing unless the engine is running or cranking")
            .applies(FuelConditions.lawForGasoline())
            .applies(FuelConditions.electricPump())
            .needs(FUEL_SUPPLY__PUMP_STOPS_WITH_ENGINE)
            .holds(s -> Answers.demanded(s.subject().getPumpStopsWithEngine(), "the pump stops with the engine",
                "the pump goes on when the engine has stopped"))
            .remedy("Feed the pump through an oil-pressure switch or the run signal of the set")
            .build();
    }
}
