// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(c)(2) as a yardstick. */
final class DeviceRatingFrom50VInAnyBoat {

    private DeviceRatingFrom50VInAnyBoat() {
    }

    static Check<CableRun> check() {
        return DeviceRatingFrom50V.check("CABLE-DEVICE-RATING-AC")
            .title("Breaker is not too large for its conductor (50 V or more)")
            .basis(Sources.yardstick("33 CFR 183.455(c)(2)").othersSay("ISO 13297: never above the permitted current"))
            .applies(Conditions.boatWithoutGasolineEngine())
            .build();
    }
}
