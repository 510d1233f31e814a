// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__CLEARANCE_BELOW;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.FuelSeparator;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** There is room below the separator to drain it. */
final class SeparatorClearance {

    private static final Length LIMIT = Length.of(8, "in");

    private SeparatorClearance() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-SEPARATOR-CLEARANCE", FuelSeparator.class)
            .title("Room below the separator to drain it")
            .why("Where no can fits below, nobody drains the water.")
            .basis(Sources.GERR)
            .gravity(Gravity.DEFECT)
            .limit("at least 0.20 m (8 in) clear below")
            .needs(FUEL_SEPARATOR__CLEARANCE_BELOW)
            .holds(s -> Comparison.atLeast(Figures.both(s.subject().getClearanceBelow()) + " are clear below the separator",
                s.subject().getClearanceBelow(), Limit.of(LIMIT, "Gerr")))
            .remedy("Move the separator up", s -> Optional.of(
                Remedy.of("Move the separator up until " + Figures.both(LIMIT) + " are clear below it")
                    .setting(s.subject(), FUEL_SEPARATOR__CLEARANCE_BELOW, LIMIT)))
            .build();
    }
}
