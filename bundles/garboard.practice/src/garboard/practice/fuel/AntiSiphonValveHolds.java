// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ANTI_SIPHON;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__LOWEST_LINE_POINT;
import static garboard.model.GarboardPackage.Literals.FUEL_TANK__TOP;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.POINT__Z;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AntiSiphonProtection;
import garboard.model.FuelSupply;
import garboard.physics.fuel.FuelLine;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;

/** The anti-siphon valve holds the column of fuel that hangs on it when the line breaks at its lowest point. */
final class AntiSiphonValveHolds {

    private AntiSiphonValveHolds() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-ANTI-SIPHON-VALVE", FuelSupply.class)
            .title("Anti-siphon valve holds the column below the tank's top")
            .why("A valve that opens too easily lets the full tank siphon out through a break below it.")
            .basis(Basis.derived("hydrostatics of the fuel between the top of the tank and the lowest point of the line"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("opening pressure at least density x g x drop from the tank's top to the lowest point of the line")
            .applies(valveFitted())
            .needs(path(FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE), path(FUEL_SUPPLY__LOWEST_LINE_POINT),
                path(FUEL_TANK__TOP, POINT__Z), path(GENERATOR_SET__FUEL))
            .holds(s -> Comparison.atLeast("the valve opens at " + Figures.both(s.subject().getAntiSiphonCrackingPressure())
                + "; a drop of " + Figures.both(drop(s)) + " pulls with "
                + Figures.both(column(s)), s.subject().getAntiSiphonCrackingPressure(),
                Limit.of(column(s), "column of fuel from the tank's top to the lowest point of the line")))
            .remedy("Fit a valve that opens at a higher pressure, or raise the line", s -> {
                PressureDifference wanted = Rounding.up(column(s), 0.5, "kPa");
                return Optional.of(Remedy.of("Fit a valve that opens at " + Figures.both(wanted) + ", or raise the line's lowest point")
                    .setting(s.subject(), FUEL_SUPPLY__ANTI_SIPHON_CRACKING_PRESSURE, wanted));
            })
            .build();
    }

    private static Condition<EObject> valveFitted() {
        return Condition.when("anti-siphon valves").known(path(FUEL_SUPPLY__ANTI_SIPHON)).test(
            s -> s.record().getFuelSupply().getAntiSiphon() == AntiSiphonProtection.ANTI_SIPHON_VALVE, "no anti-siphon valve is fitted");
    }

    private static PressureDifference column(Situation<FuelSupply> s) {
        return FuelLine.head(FuelFigures.density(s), drop(s));
    }

    private static Length drop(Situation<FuelSupply> s) {
        return Length.of(Math.max(0, s.subject().getTank().getTop().getZ().si() - s.subject().getLowestLinePoint().si()));
    }
}
