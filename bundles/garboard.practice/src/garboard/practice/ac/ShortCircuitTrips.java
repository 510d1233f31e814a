// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_DEVICE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__TRIP_CURVE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.model.ProtectionKind;
import garboard.practice.Sources;

/** A short between live conductors, which no residual-current device sees, trips the breaker at once. */
final class ShortCircuitTrips {

    private ShortCircuitTrips() {
    }

    static Check<AcOutput> check() {
        return FaultClearing.needed(Check.check("AC-FAULT-SHORT", AcOutput.class)
            .title("Short circuit trips the main breaker at once")
            .why("A short that the breaker does not see at once heats cable and winding until the thermal trip or the engine gives up.")
            .basis(Sources.IEC_60898)
            .gravity(Gravity.ADVICE)
            .limit("sustained short circuit above the magnetic trip: type B 5 times, C 10 times, D 20 times the rating; or an electronic trip")
            .applies(breakerFitted())
            .applies(faultToGroundIsSeen())
            .needs(AC_OUTPUT__TRIP_CURVE), s -> true)
            .holds(s -> Comparison.holds(FaultClearing.inWords(s), FaultClearing.isSure(s)))
            .remedy("Choose type B or an electronic trip, or a set with short-circuit boost")
            .build();
    }

    private static Condition<AcOutput> breakerFitted() {
        return Condition.<AcOutput>when("where a main circuit breaker is fitted").known(path(AC_OUTPUT__PROTECTION_DEVICE))
            .test(s -> s.subject().getProtectionDevice() == ProtectionKind.CIRCUIT_BREAKER, "no main circuit breaker is fitted");
    }

    /** Without a residual-current device the same shortfall is a danger, and is told as one. */
    private static Condition<AcOutput> faultToGroundIsSeen() {
        return Condition.<AcOutput>when("where a residual-current device sees faults to ground").known(path(AC_OUTPUT__RESIDUAL_CURRENT_DEVICE))
            .test(s -> s.subject().getResidualCurrentDevice() == Answer.YES, "without a residual-current device it is told as a fault to ground");
    }
}
