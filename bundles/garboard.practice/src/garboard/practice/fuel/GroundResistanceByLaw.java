// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__GROUND_RESISTANCE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Resistance;

/** 33 CFR 183.572: metal parts of fill and tank are grounded. */
final class GroundResistanceByLaw {

    private static final Resistance BELOW = Resistance.of(100);

    private GroundResistanceByLaw() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-GROUND-183-572", FuelSupply.class)
            .title("Fill and tank are grounded")
            .why("Fuel that runs in charges metal parts; a spark at the fill lights the vapour.")
            .basis(Sources.cfr33FromMemory("183.572"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("less than 100 ohm from the metal parts that fuel touches to ground")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_SUPPLY__GROUND_RESISTANCE)
            .holds(s -> Comparison.holds("the resistance to ground is " + Figures.metric(s.subject().getGroundResistance()),
                s.subject().getGroundResistance().isLessThan(BELOW)))
            .remedy("Clean the joints and fit a bonding conductor from fill to tank and ground")
            .build();
    }
}
