// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.425: the current of a circuit below 50 V stays within Table 5. */
final class AmpacityBelow50VByLaw {

    private AmpacityBelow50VByLaw() {
    }

    static Check<CableRun> check() {
        return Ampacity.below50V("CABLE-AMPACITY-33CFR")
            .title("Conductor may carry its circuit's current (gasoline boats, below 50 V)")
            .basis(Sources.cfr33("183.425").othersSay("note 1: 0.85 at 105 degC is quoted, the other factors are from memory"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
