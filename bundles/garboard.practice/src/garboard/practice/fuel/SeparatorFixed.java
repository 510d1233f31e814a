// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__FIXED_TO_STRUCTURE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.FuelSeparator;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The separator is fixed to the structure. */
final class SeparatorFixed {

    private SeparatorFixed() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-SEPARATOR-FIXED", FuelSeparator.class)
            .title("Separator is fixed to the structure")
            .why("A separator that hangs on its hoses works them loose.")
            .basis(Sources.GERR)
            .gravity(Gravity.DEFECT)
            .limit("bolted to the structure, not hung on hose")
            .applies(Conditions.asked(FUEL_SEPARATOR__FIXED_TO_STRUCTURE))
            .needs(FUEL_SEPARATOR__FIXED_TO_STRUCTURE)
            .holds(s -> Answers.yes(s.subject().getFixedToStructure(), "the separator is fixed to the structure",
                "the separator hangs on its hoses"))
            .remedy("Bolt the separator to a bulkhead")
            .build();
    }
}
