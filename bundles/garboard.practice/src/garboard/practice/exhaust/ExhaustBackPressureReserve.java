// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.ExhaustRun;
import garboard.practice.Figures;
import garboard.quantity.GaugePressure;

/** A new exhaust leaves room for the soot and the heel that are still to come. */
final class ExhaustBackPressureReserve {

    private static final double SHARE = 0.75;

    private ExhaustBackPressureReserve() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-BACK-PRESSURE-RESERVE", ExhaustRun.class)
            .title("Measured back pressure leaves a reserve")
            .why("Soot, scale and a heeled outlet add to the back pressure of the day of the trial.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("at most three quarters of the limit")
            .applies(SteppingBack.where(ExhaustBackPressure.check()))
            .needs(EXHAUST_RUN__MEASURED_BACK_PRESSURE)
            .uses(MAKER_LIMITS__MAXIMUM_BACK_PRESSURE)
            .needsWhen(BackPressureLimit::makerIsSilent, path(GENERATOR_SET__ASPIRATION))
            .holds(ExhaustBackPressureReserve::compare)
            .remedy("Widen or shorten the run while it is still easy")
            .build();
    }

    private static Comparison compare(Situation<ExhaustRun> s) {
        Limit<GaugePressure> whole = BackPressureLimit.of(s);
        GaugePressure measured = s.subject().getMeasuredBackPressure();
        Limit<GaugePressure> reserved = Limit.of(GaugePressure.of(SHARE * whole.value().si()), "three quarters of: " + whole.origin());
        return Comparison.atMost("the back pressure was measured as " + Figures.both(measured) + ", its limit is " + Figures.both(whole.value()),
            measured, reserved);
    }
}
