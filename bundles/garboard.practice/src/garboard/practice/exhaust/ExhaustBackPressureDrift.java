// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__BASELINE_BACK_PRESSURE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.physics.exhaust.BackPressure;
import garboard.practice.Figures;
import garboard.quantity.GaugePressure;

/** The back pressure has not crept up since the baseline was taken. */
final class ExhaustBackPressureDrift {

    private ExhaustBackPressureDrift() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-BACK-PRESSURE-DRIFT", ExhaustRun.class)
            .title("Back pressure has not risen over the baseline")
            .why("A rise tells of soot, a clogged elbow, a liner come loose in the hose or a flap that sticks.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most a quarter over the baseline")
            .needs(EXHAUST_RUN__MEASURED_BACK_PRESSURE, EXHAUST_RUN__BASELINE_BACK_PRESSURE)
            .holds(s -> Comparison.atMost("the back pressure is " + Figures.both(measured(s)) + ", it was "
                + Figures.both(s.subject().getBaselineBackPressure()), measured(s), limit(s)))
            .remedy("Look for soot, a clogged elbow, a loose liner and a stuck flap", s -> Optional.of(Remedy.of(
                "Look for soot, a clogged elbow, a loose liner and a stuck flap, then measure again; action is due above "
                    + Figures.both(limit(s).value()))))
            .build();
    }

    private static GaugePressure measured(Situation<ExhaustRun> s) {
        return s.subject().getMeasuredBackPressure();
    }

    private static Limit<GaugePressure> limit(Situation<ExhaustRun> s) {
        return Limit.of(BackPressure.actionAt(s.subject().getBaselineBackPressure()), "common practice: baseline and a quarter");
    }
}
