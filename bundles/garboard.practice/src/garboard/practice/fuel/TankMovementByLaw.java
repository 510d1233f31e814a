// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_TANK__MOVEMENT;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelTank;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 33 CFR 183.550: the tank does not move at its fastenings. */
final class TankMovementByLaw {

    private static final Length LIMIT = Length.of(0.25, "in");

    private TankMovementByLaw() {
    }

    static Check<FuelTank> check() {
        return Check.check("FUEL-TANK-MOVEMENT-183-550", FuelTank.class)
            .title("Fuel tank does not move")
            .why("A tank that works breaks its fittings and chafes through its wall.")
            .basis(Sources.cfr33("183.550"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 1/4 in (6.4 mm)")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_TANK__MOVEMENT)
            .holds(s -> Comparison.atMost("the tank moves by " + Figures.both(s.subject().getMovement()), s.subject().getMovement(),
                Limit.of(LIMIT, "33 CFR 183.550")))
            .remedy("Fasten the tank, with chocks or straps on pads that hold no water")
            .build();
    }
}
