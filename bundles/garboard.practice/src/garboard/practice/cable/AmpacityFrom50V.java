// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Where no gasoline engine is aboard, Table 5 of 33 CFR 183.425 with its bundles is a yardstick for circuits of 50 V or more. */
final class AmpacityFrom50V {

    private AmpacityFrom50V() {
    }

    static Check<CableRun> check() {
        return Ampacity.from50V("CABLE-AMPACITY-AC")
            .title("Conductor may carry its circuit's current (50 V or more)")
            .basis(Sources.yardstick("33 CFR 183.435(b)").othersSay("ISO 13297 begins to count a bundle at four conductors"))
            .applies(Conditions.boatWithoutGasolineEngine())
            .build();
    }
}
