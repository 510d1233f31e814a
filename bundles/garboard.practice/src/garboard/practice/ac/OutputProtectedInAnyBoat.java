// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(a) as a yardstick. */
final class OutputProtectedInAnyBoat {

    private OutputProtectedInAnyBoat() {
    }

    static Check<AcOutput> check() {
        return OutputProtected.check("AC-PROTECTED")
            .title("AC output has a fuse or circuit breaker")
            .basis(Sources.yardstick("33 CFR 183.455(a)"))
            .applies(Conditions.unlessLawForGasoline("183.455(a)"))
            .applies(Conditions.unlessLawForPassengers("183.320(f)"))
            .build();
    }
}
