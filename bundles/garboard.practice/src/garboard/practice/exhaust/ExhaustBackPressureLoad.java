// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.practice.Figures;
import garboard.quantity.Ratio;

/** The back pressure was measured at rated load: at part load there is less gas, and the figure flatters. */
final class ExhaustBackPressureLoad {

    private static final Ratio RATED = Ratio.of(100, "%");

    private ExhaustBackPressureLoad() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-BACK-PRESSURE-LOAD", ExhaustRun.class)
            .title("Back pressure was measured at rated load")
            .why("The loss grows with the square of the gas flow; half the load says next to nothing of the full one.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("at rated load, warm, after 15 minutes")
            .needs(EXHAUST_RUN__MEASURED_BACK_PRESSURE, EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD)
            .holds(s -> Comparison.atLeast("the back pressure was measured at " + Figures.both(load(s)) + " of the rated load", load(s),
                Limit.of(RATED, "common practice: rated load")))
            .remedy("Measure again at rated load, warm, with a water column or a gauge of 0 to 25 kPa on a metal pigtail, and read the mean")
            .build();
    }

    private static Ratio load(Situation<ExhaustRun> s) {
        return s.subject().getMeasuredBackPressureLoad();
    }
}
