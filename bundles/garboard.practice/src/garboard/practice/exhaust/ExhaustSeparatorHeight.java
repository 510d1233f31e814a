// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.SEPARATOR_DRAIN__BASE_HEIGHT;
import static garboard.model.GarboardPackage.Literals.SEPARATOR_DRAIN__GAS_SIDE_PRESSURE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.SeparatorDrain;
import garboard.physics.exhaust.SeparatorHeight;
import garboard.physics.pipe.SeaWater;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;

/** The separator stands so high over the water that its drain keeps a plug of water against the gas. */
final class ExhaustSeparatorHeight {

    private ExhaustSeparatorHeight() {
    }

    static Check<SeparatorDrain> check() {
        return Check.check("EXHAUST-SEPARATOR-HEIGHT", SeparatorDrain.class)
            .title("Base of the separator stands high enough above the water")
            .why("Lower than its gas pressure, the separator blows gas out of the drain; at the water, it fills up.")
            .basis(Basis.derived("balance of the gas pressure and the water column, p / (rho g), and 0.15 m of common practice"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("base above the waterline by the gas pressure as a column of sea water and 150 mm (6 in)")
            .applies(ExhaustConditions.separatorFitted())
            .needs(SEPARATOR_DRAIN__BASE_HEIGHT, SEPARATOR_DRAIN__GAS_SIDE_PRESSURE)
            .holds(s -> Comparison.atLeast("the base of the separator lies " + DesignAttitude.heightInWords(height(s)) + " at a gas pressure of "
                + Figures.both(s.subject().getGasSidePressure()), height(s), Limit.of(least(s), "gas pressure as a column, and 150 mm")))
            .remedy("Raise the separator, or enlarge the gas side to lower its pressure", ExhaustSeparatorHeight::raise)
            .build();
    }

    private static Length height(Situation<SeparatorDrain> s) {
        return s.subject().getBaseHeight();
    }

    private static Length least(Situation<SeparatorDrain> s) {
        return SeparatorHeight.least(PressureDifference.of(s.subject().getGasSidePressure().si()), SeparatorHeight.USUAL_MARGIN,
            SeaWater.CUSTOMARY_DENSITY);
    }

    private static Optional<Remedy> raise(Situation<SeparatorDrain> s) {
        Length enough = Rounding.up(least(s), 10, "mm");
        return Optional.of(Remedy.of("Raise the base of the separator to " + Figures.both(enough)
            + " above the waterline, or widen the gas outlet").setting(s.subject(), SEPARATOR_DRAIN__BASE_HEIGHT, enough));
    }
}
