// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ENGINE_SHUT_OFF;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__TANK_SHUT_OFF;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.Answer;
import garboard.model.FuelSupply;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.455: fuel can be shut off at the tank and at the engine. */
final class ShutOffsOfPassengerVessel {

    private ShutOffsOfPassengerVessel() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-SHUT-OFFS-182-455", FuelSupply.class)
            .title("Fuel can be shut off at tank and engine (small passenger vessels)")
            .why("A fuel fire goes on as long as fuel comes; it has to be stopped at both ends of the line.")
            .basis(Sources.cfr46FromMemory("182.455").othersSay("46 CFR 119.455, whose text was read, asks for the same"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a shut-off at the tank and one at the engine")
            .applies(Conditions.smallPassengerVessel())
            .needs(FUEL_SUPPLY__TANK_SHUT_OFF, FUEL_SUPPLY__ENGINE_SHUT_OFF)
            .holds(s -> {
                boolean tank = s.subject().getTankShutOff() == Answer.YES;
                boolean engine = s.subject().getEngineShutOff() == Answer.YES;
                String found = tank && engine ? "fuel can be shut off at both ends" : tank ? "there is no shut-off at the engine"
                    : engine ? "there is no shut-off at the tank" : "there is no shut-off at all";
                return Comparison.holds(found, tank && engine);
            })
            .remedy("Fit the shut-off that is missing")
            .build();
    }
}
