// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_DEVICE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.model.ProtectionKind;

/** A fuse or breaker stands between the set and what it feeds: everything but authority. */
final class OutputProtected {

    private OutputProtected() {
    }

    static Check.Builder<AcOutput> check(String id) {
        return Check.check(id, AcOutput.class)
            .why("A short behind an unprotected alternator burns cable and windings until the engine stalls.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a fuse or a trip-free circuit breaker")
            .needs(AC_OUTPUT__PROTECTION_DEVICE)
            .holds(s -> compare(s.subject().getProtectionDevice()))
            .remedy("Fit a trip-free circuit breaker close to the set");
    }

    static Comparison compare(ProtectionKind device) {
        return switch (device) {
            case FUSE -> Comparison.holds("a fuse protects the output", true);
            case CIRCUIT_BREAKER -> Comparison.holds("a circuit breaker protects the output", true);
            case NONE, NOT_ENTERED -> Comparison.holds("nothing protects the output", false);
        };
    }
}
