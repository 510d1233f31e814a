// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.TransferSwitch;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.390(d): the breaker of the shore supply is interlocked with the vessel's own sources. */
final class SourcesInterlockedOnPassengerVessel {

    private SourcesInterlockedOnPassengerVessel() {
    }

    static Check<TransferSwitch> check() {
        return SourceSelection.check("AC-SOURCES-INTERLOCKED-183-390")
            .title("Shore breaker is interlocked with the set (small passenger vessels)")
            .basis(Sources.cfr46("183.390(d)"))
            .applies(Conditions.smallPassengerVessel())
            .build();
    }
}
