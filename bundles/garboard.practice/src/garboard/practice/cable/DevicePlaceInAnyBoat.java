// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(b) as a yardstick. */
final class DevicePlaceInAnyBoat {

    private DevicePlaceInAnyBoat() {
    }

    static Check<CableRun> check() {
        return DevicePlaceByPanel.check("CABLE-DEVICE-PLACE")
            .title("Fuse or breaker sits close to the source")
            .basis(Sources.yardstick("33 CFR 183.455(b)").othersSay("ISO 13297: 1.8 m from a charging source that does not limit itself"))
            .applies(Conditions.boatWithoutGasolineEngine())
            .build();
    }
}
