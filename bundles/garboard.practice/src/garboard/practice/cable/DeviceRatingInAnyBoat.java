// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(c)(1) as a yardstick, read literally. */
final class DeviceRatingInAnyBoat {

    private DeviceRatingInAnyBoat() {
    }

    static Check<CableRun> check() {
        return DeviceRating.literal("CABLE-DEVICE-RATING-LITERAL")
            .title("Fuse or breaker is not too large for its conductor (below 50 V)")
            .basis(Sources.yardstick("33 CFR 183.455(c)(1)").othersSay("ISO 13297: never above the permitted current"))
            .applies(Conditions.boatWithoutGasolineEngine())
            .build();
    }
}
