// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__BOWL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.BowlKind;
import garboard.model.FuelSeparator;
import garboard.practice.Sources;

/** The separator's bowl survives a fire: of metal, or for diesel with a heat shield. */
final class SeparatorBowl {

    private SeparatorBowl() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-SEPARATOR-BOWL", FuelSeparator.class)
            .title("Separator bowl stands fire")
            .why("A plastic bowl melts in the first minute of a fire and empties the tank into it.")
            .basis(Sources.GERR)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("gasoline: metal only; diesel: metal, or clear with a metal heat shield")
            .needs(FUEL_SEPARATOR__BOWL, GENERATOR_SET__FUEL)
            .holds(s -> switch (s.subject().getBowl()) {
                case METAL -> Comparison.holds("the bowl is of metal", true);
                case CLEAR_WITH_HEAT_SHIELD -> FuelFigures.isGasoline(s) ? Comparison.holds("the bowl is clear, on gasoline", false)
                    : Comparison.holds("the bowl is clear and has a heat shield", true);
                default -> Comparison.holds("the bowl is clear and has no heat shield", false);
            })
            .remedy("Fit a metal bowl; on diesel a heat shield will do", s -> Optional.of(
                Remedy.of(FuelFigures.isGasoline(s) ? "Fit a metal bowl" : "Fit a metal bowl or a heat shield around the clear one")
                    .setting(s.subject(), FUEL_SEPARATOR__BOWL, BowlKind.METAL)))
            .build();
    }
}
