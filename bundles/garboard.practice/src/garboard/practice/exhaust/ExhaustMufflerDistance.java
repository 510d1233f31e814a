// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__DISTANCE_FROM_ENGINE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Muffler;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** The lift muffler stands close to the engine, so that the hose ahead of it stays short and steep. */
final class ExhaustMufflerDistance {

    private static final Length FARTHEST = Length.of(10, "ft");

    private ExhaustMufflerDistance() {
    }

    static Check<Muffler> check() {
        return Check.check("EXHAUST-MUFFLER-DISTANCE", Muffler.class)
            .title("Lift muffler stands close to the engine")
            .why("A long hose ahead of the muffler needs a fall that is seldom there, and holds water that runs to and fro.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 3 m (10 ft) from the engine's outlet")
            .applies(ExhaustConditions.liftMuffler())
            .needs(MUFFLER__DISTANCE_FROM_ENGINE)
            .holds(s -> Comparison.atMost("the muffler stands " + Figures.both(s.subject().getDistanceFromEngine()) + " from the engine",
                s.subject().getDistanceFromEngine(), Limit.of(FARTHEST, "common practice")))
            .remedy("Move the muffler closer to the engine", ExhaustMufflerDistance::move)
            .build();
    }

    private static Optional<Remedy> move(Situation<Muffler> s) {
        Length close = Rounding.down(FARTHEST, 100, "mm");
        return Optional.of(Remedy.of("Move the muffler to within " + Figures.both(close) + " of the engine's outlet")
            .setting(s.subject(), MUFFLER__DISTANCE_FROM_ENGINE, close));
    }
}
