// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__FINENESS;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__FILTER_FINENESS;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelSeparator;
import garboard.model.MakerLimits;
import garboard.quantity.Display;
import garboard.quantity.Length;

/** The element before the set is fine enough to spare the filter on it, and the injection. */
final class SeparatorFineness {

    private static final Length DIESEL = Length.of(30, "um");
    private static final Length GASOLINE = Length.of(10, "um");

    private SeparatorFineness() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-SEPARATOR-FINENESS", FuelSeparator.class)
            .title("Separator element is fine enough")
            .why("Coarse elements let the dirt through to the small filter on the set, which then stops it at sea.")
            .basis(Basis.commonPractice().othersSay("Marine Diesel Basics 1: 10 um before the set, 2 um on it"))
            .gravity(Gravity.DEFECT)
            .limit("at most 30 um for diesel, 10 um and water-separating for injected gasoline, or the maker's figure")
            .applies(FuelConditions.injection())
            .needs(FUEL_SEPARATOR__FINENESS, GENERATOR_SET__FUEL)
            .uses(MAKER_LIMITS__FILTER_FINENESS)
            .holds(s -> Comparison.atMost("the element keeps back what is larger than " + Display.formatIn(s.subject().getFineness(), "um"),
                s.subject().getFineness(), limit(s)))
            .remedy("Change the element for a finer one", s -> Optional.of(
                Remedy.of("Change the element for one of " + Display.formatIn(limit(s).value(), "um"))
                    .setting(s.subject(), FUEL_SEPARATOR__FINENESS, limit(s).value())))
            .build();
    }

    private static Limit<Length> limit(Situation<FuelSeparator> s) {
        return Limit.makerOr(s.maker(MakerLimits::getFilterFineness), FuelFigures.isGasoline(s) ? GASOLINE : DIESEL, "common practice");
    }
}
