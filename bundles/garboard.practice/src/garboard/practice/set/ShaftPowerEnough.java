// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ALTERNATOR_EFFICIENCY;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.GeneratorSet;
import garboard.practice.Figures;
import garboard.quantity.Power;

/** The engine can drive the alternator at its rating. */
final class ShaftPowerEnough {

    private static final double SPREAD = 0.03;

    private ShaftPowerEnough() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-SHAFT-POWER", GeneratorSet.class)
            .title("Engine has the power for the alternator's rating")
            .why("An engine without it drops its speed before the rating is reached; or a figure was misread.")
            .basis(Basis.derived("conservation of energy: electrical power is shaft power times efficiency"))
            .gravity(Gravity.DEFECT)
            .limit("shaft power times alternator efficiency at least 97 % of the rated power: data sheets are rounded")
            .needs(GENERATOR_SET__SHAFT_POWER, GENERATOR_SET__ALTERNATOR_EFFICIENCY, GENERATOR_SET__RATED_POWER)
            .holds(s -> {
                Power electrical = Power.of(s.subject().getShaftPower().si() * s.subject().getAlternatorEfficiency().si());
                return Comparison.atLeast(Figures.both(s.subject().getShaftPower()) + " at the shaft and " + Figures.metric(s.subject()
                    .getAlternatorEfficiency()) + " efficiency make " + Figures.metric(electrical) + " for a rating of "
                    + Figures.metric(s.subject().getRatedPower()), electrical,
                    Limit.of(Power.of((1 - SPREAD) * s.subject().getRatedPower().si()), "97 % of the rated power"));
            })
            .remedy("Read shaft power and efficiency again; if they are right, rate the set for what the engine gives")
            .build();
    }
}
