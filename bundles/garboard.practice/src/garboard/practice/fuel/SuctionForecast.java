// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PUMP_FLOW;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PUMP_POSITION;
import static garboard.model.GarboardPackage.Literals.FUEL_TANK__BOTTOM_HEIGHT;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_FUEL_VACUUM;
import static garboard.model.GarboardPackage.Literals.POINT__Z;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelSupply;
import garboard.physics.fuel.FuelLine;
import garboard.physics.pipe.PressureBudget;
import garboard.practice.Figures;
import garboard.quantity.PressureDifference;

/** Lift, line and anti-siphon valve together leave the pump a suction that it can do with a clean filter. */
final class SuctionForecast {

    private SuctionForecast() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-SUCTION-FORECAST", FuelSupply.class)
            .title("Reckoned fuel suction is low enough")
            .why("Each fitting alone looks harmless; together they boil gasoline or draw air past the joints.")
            .basis(Basis.derived("hydrostatics and pipe flow of cold fuel; the limit of 10 kPa is common practice"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("lift, lines and anti-siphon valve together at most 10 kPa (3 inHg), or the maker's greatest vacuum;"
                + " the filter not counted")
            .needs(path(FUEL_SUPPLY__PUMP_POSITION, POINT__Z), path(FUEL_TANK__BOTTOM_HEIGHT), path(FUEL_SUPPLY__PUMP_FLOW),
                path(GENERATOR_SET__FUEL), SuctionLines.lines().then(FUEL_LINE_RUN__BORE), SuctionLines.lines().then(FUEL_LINE_RUN__LENGTH))
            .uses(SuctionLines.function(), path(FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE), path(MAKER_LIMITS__MAXIMUM_FUEL_VACUUM))
            .holds(s -> {
                PressureBudget budget = budget(s);
                String parts = String.join(", ", budget.parts().stream()
                    .map(part -> part.cause() + " " + Figures.metric(part.pressure())).toList());
                return Comparison.atMost("the pump sucks with " + Figures.both(budget.total()) + " (" + parts + ")", budget.total(),
                    FuelVacuum.limit(s));
            })
            .remedy("Larger lines, a booster pump at the tank, or a lower pump", SuctionForecast::widerLines)
            .build();
    }

    private static Optional<Remedy> widerLines(Situation<FuelSupply> s) {
        double othersPa = budget(s).total().si() - SuctionLines.drop(s).si();
        double leftPa = FuelVacuum.limit(s).value().si() - othersPa;
        return leftPa > 0 ? SuctionLines.widen(s, PressureDifference.of(leftPa)) : Optional.empty();
    }

    private static PressureBudget budget(Situation<FuelSupply> s) {
        PressureDifference valve = s.subject().getAntiSiphonCrackingPressure();
        PressureBudget devices = valve == null ? PressureBudget.empty() : PressureBudget.empty().plus("anti-siphon valve", valve);
        return FuelLine.suction(FuelFigures.cold(s).density(), FuelLift.lift(s), SuctionLines.drop(s), devices);
    }
}
