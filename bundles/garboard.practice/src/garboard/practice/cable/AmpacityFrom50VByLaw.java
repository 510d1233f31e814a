// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.435(b): the current of a circuit of 50 V or more stays within Table 5, bundles counted. */
final class AmpacityFrom50VByLaw {

    private AmpacityFrom50VByLaw() {
    }

    static Check<CableRun> check() {
        return Ampacity.from50V("CABLE-AMPACITY-AC-33CFR")
            .title("Conductor may carry its circuit's current (gasoline boats, 50 V or more)")
            .basis(Sources.cfr33("183.435(b)").othersSay("note 1: 0.85 at 105 degC is quoted, the other factors are from "
                + "memory; note 2 is quoted"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
