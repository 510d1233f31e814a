// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Everywhere else a fuse or breaker in each ungrounded conductor is common practice. */
final class CircuitProtectedInAnyBoat {

    private CircuitProtectedInAnyBoat() {
    }

    static Check<CableRun> check() {
        return CircuitProtected.check("CABLE-PROTECTED")
            .title("Circuit has a fuse or circuit breaker")
            .basis(Sources.yardstick("33 CFR 183.455(a)"))
            .applies(Conditions.boatWithoutGasolineEngine())
            .build();
    }
}
