// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.TransferSwitch;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Shore and set cannot feed one bus together. */
final class SourcesInterlocked {

    private SourcesInterlocked() {
    }

    static Check<TransferSwitch> check() {
        return SourceSelection.check("AC-SOURCES-INTERLOCKED")
            .title("Shore and set cannot be on the bus together")
            .basis(Sources.yardstick("46 CFR 183.390(d)"))
            .applies(Conditions.unlessLawForPassengers("183.390(d)"))
            .build();
    }
}
