// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEST_TAP_DISTANCE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** The tap for the gauge sits close behind the manifold or the turbine, where all of the back pressure is felt. */
final class ExhaustTestTapDistance {

    private static final Length FARTHEST = Length.of(12, "in");

    private ExhaustTestTapDistance() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-TEST-TAP-DISTANCE", ExhaustRun.class)
            .title("Tap for the gauge sits close to the engine")
            .why("Farther down the run the gauge misses part of the loss.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("at most 0.3 m (12 in) from manifold or turbine outlet, before the injection, in a straight part")
            .applies(ExhaustConditions.testTapFitted())
            .needs(EXHAUST_RUN__TEST_TAP_DISTANCE)
            .holds(s -> Comparison.atMost("the tap sits " + Figures.both(s.subject().getTestTapDistance()) + " from the engine",
                s.subject().getTestTapDistance(), Limit.of(FARTHEST, "common practice")))
            .remedy("Move the tap closer to the engine", ExhaustTestTapDistance::move)
            .build();
    }

    private static Optional<Remedy> move(Situation<ExhaustRun> s) {
        Length close = Rounding.down(FARTHEST, 10, "mm");
        return Optional.of(Remedy.of("Put the tap within " + Figures.both(close) + " of manifold or turbine outlet")
            .setting(s.subject(), EXHAUST_RUN__TEST_TAP_DISTANCE, close));
    }
}
