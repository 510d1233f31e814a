// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ANTI_SIPHON;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.AntiSiphonProtection;
import garboard.model.FuelSupply;
import garboard.practice.Sources;

/** The same protection is wise for diesel, where no law asks for it. */
final class AntiSiphonForDiesel {

    private AntiSiphonForDiesel() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-ANTI-SIPHON-DIESEL", FuelSupply.class)
            .title("Diesel tank cannot siphon out either")
            .why("A tank of diesel in the bilge pollutes the water, feeds a fire and leaves the set dry.")
            .basis(Sources.yardstick("33 CFR 183.568"))
            .gravity(Gravity.ADVICE)
            .limit("line above the top of the tank, anti-siphon valve, stop valve, or a shut-off reached from outside")
            .applies(FuelConditions.noLawForGasoline())
            .needs(FUEL_SUPPLY__ANTI_SIPHON)
            .holds(s -> s.subject().getAntiSiphon() == AntiSiphonProtection.NONE
                ? Comparison.holds("nothing keeps the tank from siphoning out", false)
                : Comparison.holds("the tank is kept from siphoning out", true))
            .remedy("Lead the line above the top of the tank, or fit a shut-off at the tank that is reached from outside")
            .build();
    }
}
