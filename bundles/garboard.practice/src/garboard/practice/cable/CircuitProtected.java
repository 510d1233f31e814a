// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.CableRun;
import garboard.model.ProtectionKind;

/** Every ungrounded conductor but the starter's has a fuse or a circuit breaker. */
final class CircuitProtected {

    private CircuitProtected() {
    }

    /** Everything but authority. The output cable's device is described with the switchboard. */
    static Check.Builder<CableRun> check(String id) {
        return Check.check(id, CableRun.class)
            .among(run -> !CableRuns.isOutputCable(run))
            .why("When the insulation chafes through, a wire without a fuse becomes a heater that burns along its whole length.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a fuse or a trip-free circuit breaker with manual reset in each ungrounded conductor; cranking conductors are exempt")
            .applies(CableConditions.workingCircuit())
            .needs(CABLE_RUN__PROTECTION)
            .holds(s -> Comparison.holds(inWords(s.subject().getProtection()), s.subject().getProtection() != ProtectionKind.NONE))
            .remedy("Fit a fuse or circuit breaker at the source of the current");
    }

    private static String inWords(ProtectionKind protection) {
        return switch (protection) {
            case FUSE -> "a fuse protects the conductor";
            case CIRCUIT_BREAKER -> "a circuit breaker protects the conductor";
            case NONE, NOT_ENTERED -> "nothing protects the conductor";
        };
    }
}
