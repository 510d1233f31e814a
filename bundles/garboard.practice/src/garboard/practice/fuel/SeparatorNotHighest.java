// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSeparator;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The separator is not the highest point of the line. */
final class SeparatorNotHighest {

    private SeparatorNotHighest() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-SEPARATOR-HIGHEST", FuelSeparator.class)
            .title("Separator is not the highest point of the line")
            .why("Air gathers at the highest point; in the separator it breaks the suction.")
            .basis(Sources.GERR)
            .gravity(Gravity.DEFECT)
            .limit("some part of the line lies higher")
            .applies(Conditions.asked(FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE))
            .needs(FUEL_SEPARATOR__HIGHEST_POINT_OF_LINE)
            .holds(s -> Answers.no(s.subject().getHighestPointOfLine(), "the separator is not the highest point",
                "the separator is the highest point of the line"))
            .remedy("Lower the separator")
            .build();
    }
}
