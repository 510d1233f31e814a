// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__FIRE_TESTED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSeparator;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** ISO 16147: the filter as installed survives a fire, on diesel too. */
final class FilterStandsFire {

    private FilterStandsFire() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-FILTER-FIRE", FuelSeparator.class)
            .title("Fuel filter stands fire")
            .why("A filter that opens in a fire pours the tank into it, diesel or not.")
            .basis(Sources.ISO_16147)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 5 oz leak in a fire of 2.5 min, as installed")
            .applies(FuelConditions.noLawForGasoline())
            .applies(Conditions.asked(FUEL_SEPARATOR__FIRE_TESTED))
            .needs(FUEL_SEPARATOR__FIRE_TESTED)
            .holds(s -> Answers.yes(s.subject().getFireTested(), "the filter is stated to stand fire",
                "nothing says that the filter stands fire"))
            .remedy("Fit a metal filter that its maker states to have passed the test, or shield it")
            .build();
    }
}
