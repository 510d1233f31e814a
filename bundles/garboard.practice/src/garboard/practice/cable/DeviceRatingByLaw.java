// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(c)(1) as law, read literally. */
final class DeviceRatingByLaw {

    private DeviceRatingByLaw() {
    }

    static Check<CableRun> check() {
        return DeviceRating.literal("CABLE-DEVICE-RATING-33CFR")
            .title("Fuse or breaker is not too large for its conductor (gasoline boats, below 50 V)")
            .basis(Sources.cfr33("183.455(c)(1)").othersSay("ISO 13297: never above the permitted current"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
