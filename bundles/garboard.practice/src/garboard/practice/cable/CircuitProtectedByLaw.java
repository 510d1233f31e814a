// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(a): an overcurrent device in each ungrounded conductor. */
final class CircuitProtectedByLaw {

    private CircuitProtectedByLaw() {
    }

    static Check<CableRun> check() {
        return CircuitProtected.check("CABLE-PROTECTED-33CFR")
            .title("Circuit has a fuse or circuit breaker (gasoline boats)")
            .basis(Sources.cfr33("183.455(a)"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
