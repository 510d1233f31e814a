// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__ON_ENGINE_FINENESS;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelSeparator;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Display;
import garboard.quantity.Length;

/** The filter on a diesel set is finer than the one before it, but not so fine that it clogs at once. */
final class EngineFilterFineness {

    private static final Length LEAST = Length.of(2, "um");
    private static final Length GREATEST = Length.of(10, "um");

    private EngineFilterFineness() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-ENGINE-FILTER-FINENESS", FuelSeparator.class)
            .title("Filter on the set is fine enough for the injection")
            .why("What the last filter lets through wears the injection pump and the nozzles.")
            .basis(Sources.MARINE_DIESEL_BASICS.othersSay("2 um there; up to 10 um are in use"))
            .gravity(Gravity.DEFECT)
            .limit("2 to 10 um")
            .applies(Conditions.dieselSet())
            .needs(FUEL_SEPARATOR__ON_ENGINE_FINENESS)
            .holds(s -> Comparison.between("the filter on the set keeps back what is larger than "
                + Display.formatIn(s.subject().getOnEngineFineness(), "um"), s.subject().getOnEngineFineness(),
                Limit.of(LEAST, "Marine Diesel Basics 1"), Limit.of(GREATEST, "common practice")))
            .remedy("Fit the element that the set's maker names")
            .build();
    }
}
