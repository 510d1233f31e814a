// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_TANK__TEST_PRESSURE;
import static garboard.model.GarboardPackage.Literals.FUEL_TANK__TEST_PRESSURE_ON_LABEL;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelTank;
import garboard.practice.Figures;
import garboard.practice.Sources;

/** 33 CFR 183.580: the tank was tested at the pressure that its label shows. */
final class TankTestPressureByLaw {

    private TankTestPressureByLaw() {
    }

    static Check<FuelTank> check() {
        return Check.check("FUEL-TANK-TEST-183-580", FuelTank.class)
            .title("Tank was tested at the pressure on its label")
            .why("A tank that was never under its label's pressure may open a seam at the first overfilling.")
            .basis(Sources.cfr33("183.580 with 183.514(b)(5)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("test pressure at least the pressure on the label, with the leak looked for by another way than pressure drop")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_TANK__TEST_PRESSURE, FUEL_TANK__TEST_PRESSURE_ON_LABEL)
            .holds(s -> Comparison.atLeast("the tank was tested at " + Figures.both(s.subject().getTestPressure()),
                s.subject().getTestPressure(), Limit.of(s.subject().getTestPressureOnLabel(), "pressure on the tank's label")))
            .remedy("Have the tank tested at the pressure on its label")
            .build();
    }
}
