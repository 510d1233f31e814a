// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__FIRE_TESTED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSeparator;
import garboard.practice.Answers;
import garboard.practice.Sources;

/** 33 CFR 183.534: the filter as installed passes the fire test. */
final class FilterStandsFireByLaw {

    private FilterStandsFireByLaw() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-FILTER-FIRE-183-534", FuelSeparator.class)
            .title("Fuel filter has passed the fire test")
            .why("A filter that opens in a fire pours the tank into it.")
            .basis(Sources.cfr33("183.534"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 5 oz leak in a fire of 2.5 min, as installed, by the maker's statement")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_SEPARATOR__FIRE_TESTED)
            .holds(s -> Answers.demanded(s.subject().getFireTested(), "the filter is stated to have passed the fire test",
                "nothing says that the filter has passed the fire test"))
            .remedy("Fit a filter that its maker states to have passed the test")
            .build();
    }
}
