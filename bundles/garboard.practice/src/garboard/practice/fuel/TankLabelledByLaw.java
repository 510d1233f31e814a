// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_TANK__LABELLED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelTank;
import garboard.practice.Answers;
import garboard.practice.Sources;

/** 33 CFR 183.514: the tank carries its label. */
final class TankLabelledByLaw {

    private TankLabelledByLaw() {
    }

    static Check<FuelTank> check() {
        return Check.check("FUEL-TANK-LABEL-183-514", FuelTank.class)
            .title("Fuel tank carries its label")
            .why("Without a label nobody knows what pressure the tank was built and tested for.")
            .basis(Sources.cfr33("183.514"))
            .gravity(Gravity.DEFECT)
            .limit("label with maker, date, capacity, material, design pressure and statement of test")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_TANK__LABELLED)
            .holds(s -> Answers.demanded(s.subject().getLabelled(), "the tank is labelled",
                "the tank has no label"))
            .remedy("Ask the tank's maker for the label, or replace the tank")
            .build();
    }
}
