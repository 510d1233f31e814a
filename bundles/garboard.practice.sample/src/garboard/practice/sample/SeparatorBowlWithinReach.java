// SPDX-License-Identifier: EPL-2.0
package garboard.practice.sample;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__CLEARANCE_BELOW;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.FuelSeparator;
import garboard.quantity.Display;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;

/** There is room under the separator for a jar, so that the water is really drained. */
final class SeparatorBowlWithinReach {

    private static final Length ROOM = Length.of(250, "mm");

    private SeparatorBowlWithinReach() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("YARD-SEPARATOR-ROOM", FuelSeparator.class)
            .title("A jar fits under the fuel-water separator")
            .why("A bowl that cannot be drained into a jar is not drained, and the water goes to the pump.")
            .basis(YardPractice.HOUSE_RULES)
            .gravity(Gravity.ADVICE)
            .limit("at least 250 mm (10 in) below the drain")
            .needs(FUEL_SEPARATOR__CLEARANCE_BELOW)
            .holds(s -> Comparison.atLeast("below the separator there are "
                + Display.of(UnitSystem.SI).format(s.subject().getClearanceBelow()), s.subject().getClearanceBelow(),
                Limit.of(ROOM, "house rule 1")))
            .remedy("Raise the separator", s -> Optional.of(Remedy.of("Raise the separator until there are 250 mm below its drain")
                .setting(s.subject(), FUEL_SEPARATOR__CLEARANCE_BELOW, ROOM)))
            .build();
    }
}
