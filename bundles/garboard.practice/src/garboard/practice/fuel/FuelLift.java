// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PUMP_POSITION;
import static garboard.model.GarboardPackage.Literals.FUEL_TANK__BOTTOM_HEIGHT;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_FUEL_LIFT;
import static garboard.model.GarboardPackage.Literals.POINT__Z;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelSupply;
import garboard.model.MakerLimits;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** The pump does not have to lift the fuel too high from a tank that is nearly empty. */
final class FuelLift {

    private static final Length LIMIT = Length.of(1.2);

    private FuelLift() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-LIFT", FuelSupply.class)
            .title("Fuel lift is within the pump's reach")
            .why("A set that runs with a full tank starves or draws air when the tank is low.")
            .basis(Basis.commonPractice().othersSay("0.9 m (3 ft) is a stricter figure in use"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 1.2 m (4 ft) from the bottom of the tank up to the lift pump, or the maker's greatest lift")
            .needs(path(FUEL_SUPPLY__PUMP_POSITION, POINT__Z), path(FUEL_TANK__BOTTOM_HEIGHT))
            .uses(path(MAKER_LIMITS__MAXIMUM_FUEL_LIFT))
            .holds(s -> Comparison.atMost(lift(s).si() > 0
                ? "the pump lifts the last of the fuel by " + Figures.both(lift(s)) : "the pump stands below the bottom of the tank",
                lift(s), limit(s)))
            .remedyAtTheWorst("Fit a booster pump at the tank, or lower the lift pump", s -> Optional.of(Remedy.of(
                "Fit a booster pump at the tank, or lower the lift pump by at least " + Figures.both(tooMuch(s)))))
            .build();
    }

    /** By how much the lift may be above the limit at the worst of its accuracy. */
    private static Length tooMuch(Situation<FuelSupply> s) {
        return Rounding.up(Length.of(lift(s).si() + lift(s).accuracySi().orElse(0) - limit(s).value().si()), 10, "mm");
    }

    /** With the accuracy of the two heights, which are measured apart. */
    static Length lift(Situation<FuelSupply> s) {
        Length pump = s.subject().getPumpPosition().getZ();
        Length bottom = s.subject().getTank().getBottomHeight();
        Length lift = Length.of(pump.si() - bottom.si());
        double halfWidthM = Math.hypot(pump.accuracySi().orElse(0), bottom.accuracySi().orElse(0));
        return halfWidthM > 0 ? lift.withAccuracy(Length.of(halfWidthM)) : lift;
    }

    private static Limit<Length> limit(Situation<FuelSupply> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMaximumFuelLift), LIMIT, "common practice");
    }
}
