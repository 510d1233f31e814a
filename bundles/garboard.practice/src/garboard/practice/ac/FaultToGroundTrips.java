// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.practice.Sources;

/** A fault to ground trips something at once: a residual-current device, or a breaker that the set can trip. */
final class FaultToGroundTrips {

    private FaultToGroundTrips() {
    }

    static Check<AcOutput> check() {
        return FaultClearing.needed(Check.check("AC-FAULT-GROUND", AcOutput.class)
            .title("Fault to ground trips something at once")
            .why("A small set gives little more than its rated current; a breaker that waits for five times as much leaves a live case live.")
            .basis(Sources.IEC_60898.othersSay("three times the rated current for 2 s: Lloyd's Register naval rules 9-2-6.4, text read"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a residual-current device, an electronic trip, or a sustained short circuit above the magnetic trip: "
                + "type B 5 times, C 10 times, D 20 times the rating")
            .applies(AcConditions.grounded())
            .needs(AC_OUTPUT__RESIDUAL_CURRENT_DEVICE), s -> !hasResidualDevice(s))
            .holds(s -> hasResidualDevice(s) ? Comparison.holds("a residual-current device sees a fault to ground", true)
                : Comparison.holds(FaultClearing.inWords(s), FaultClearing.isSure(s)))
            .remedy("Fit a residual-current device; or a breaker of type B, an electronic trip, a set with short-circuit boost")
            .build();
    }

    private static boolean hasResidualDevice(Situation<AcOutput> s) {
        return s.subject().getResidualCurrentDevice() == Answer.YES;
    }
}
