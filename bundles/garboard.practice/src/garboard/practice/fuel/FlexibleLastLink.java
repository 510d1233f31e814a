// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__FLEXIBLE_LAST_LINK;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSupply;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The last link to the set is rated hose. */
final class FlexibleLastLink {

    private FlexibleLastLink() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-FLEXIBLE-LINK", FuelSupply.class)
            .title("Rated hose is the last link to the set")
            .why("The set moves on its mounts; a rigid line cracks at its last fitting.")
            .basis(Sources.GERR)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("rated hose between the rigid line and the set")
            .applies(Conditions.unlessLawForGasoline("183.562"))
            .applies(Conditions.asked(FUEL_SUPPLY__FLEXIBLE_LAST_LINK))
            .needs(FUEL_SUPPLY__FLEXIBLE_LAST_LINK)
            .holds(s -> Answers.yes(s.subject().getFlexibleLastLink(), "the last link is a hose",
                "the line goes rigid to the set"))
            .remedy("Fit a length of rated fuel hose at the set")
            .build();
    }
}
