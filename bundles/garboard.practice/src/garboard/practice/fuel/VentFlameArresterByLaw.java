// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__VENT_FLAME_ARRESTER;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Sources;

/** 33 CFR 183.520: the tank's vent keeps a flame out. */
final class VentFlameArresterByLaw {

    private VentFlameArresterByLaw() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-VENT-183-520", FuelSupply.class)
            .title("Tank vent has a flame arrester")
            .why("Vapour at the vent lights from outside, and the flame runs back into the tank.")
            .basis(Sources.cfr33("183.520"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a flame arrester that can be cleaned, unless the vent itself is one")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_SUPPLY__VENT_FLAME_ARRESTER)
            .holds(s -> Answers.demanded(s.subject().getVentFlameArrester(), "the vent has a flame arrester",
                "the vent has no flame arrester"))
            .remedy("Fit a vent with a flame screen")
            .build();
    }
}
