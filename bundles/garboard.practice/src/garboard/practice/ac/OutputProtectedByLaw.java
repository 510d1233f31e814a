// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(a) as law. */
final class OutputProtectedByLaw {

    private OutputProtectedByLaw() {
    }

    static Check<AcOutput> check() {
        return OutputProtected.check("AC-PROTECTED-183-455")
            .title("AC output has a fuse or circuit breaker (gasoline boats)")
            .basis(Sources.cfr33("183.455(a)"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
