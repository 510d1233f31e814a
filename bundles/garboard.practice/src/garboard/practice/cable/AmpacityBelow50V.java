// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Where no gasoline engine is aboard, Table 5 of 33 CFR 183.425 is a yardstick for circuits below 50 V. */
final class AmpacityBelow50V {

    private AmpacityBelow50V() {
    }

    static Check<CableRun> check() {
        return Ampacity.below50V("CABLE-AMPACITY")
            .title("Conductor may carry its circuit's current (below 50 V)")
            .basis(Sources.yardstick("33 CFR 183.425").othersSay("ISO 10133 annex A has figures for metric sizes"))
            .applies(Conditions.boatWithoutGasolineEngine())
            .build();
    }
}
