// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT;
import static garboard.model.GarboardPackage.Literals.RISER__LIFT_HEIGHT;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.Riser;
import garboard.physics.exhaust.LiftColumn;
import garboard.physics.pipe.SeaWater;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;

/** The gas does not have to lift the water too high. */
final class ExhaustLiftHeight {

    private static final Length HIGHEST = Length.of(42, "in");

    private ExhaustLiftHeight() {
    }

    static Check<Riser> check() {
        return Check.check("EXHAUST-LIFT-HEIGHT", Riser.class)
            .title("Exhaust water is not lifted too high")
            .why("Each metre of solid water is 10 kPa (3 inHg) of back pressure, and all of it falls back into the muffler at the stop.")
            .basis(Sources.GERR.othersSay("some allow 1.2 m (4 ft); both are above 3 inHg as a solid column and count on gas in the column"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 1.07 m (42 in) from the bottom of the muffler to the highest point, or the maker's height")
            .applies(ExhaustConditions.liftMuffler())
            .needs(RISER__LIFT_HEIGHT)
            .uses(MAKER_LIMITS__MAXIMUM_LIFT_HEIGHT)
            .holds(s -> Comparison.atMost("the water is lifted " + Figures.both(lift(s)) + ", " + Figures.both(column(lift(s)))
                + " as a solid column", lift(s), limit(s)))
            .remedy("Raise the muffler, lower the crest, or fit a gas and water separator", ExhaustLiftHeight::lower)
            .build();
    }

    private static Length lift(Situation<Riser> s) {
        return s.subject().getLiftHeight();
    }

    private static PressureDifference column(Length lift) {
        return LiftColumn.pressure(lift, Ratio.of(1), SeaWater.CUSTOMARY_DENSITY);
    }

    private static Limit<Length> limit(Situation<Riser> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMaximumLiftHeight), HIGHEST, "Gerr: 42 in");
    }

    private static Optional<Remedy> lower(Situation<Riser> s) {
        Length enough = Rounding.down(limit(s).value(), 5, "mm");
        return Optional.of(Remedy.of("Raise the muffler or lower the crest until the lift is " + Figures.both(enough)
            + " at most, or fit a gas and water separator").setting(s.subject(), RISER__LIFT_HEIGHT, enough));
    }
}
