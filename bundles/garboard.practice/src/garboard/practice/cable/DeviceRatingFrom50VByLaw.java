// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(c)(2) as law. */
final class DeviceRatingFrom50VByLaw {

    private DeviceRatingFrom50VByLaw() {
    }

    static Check<CableRun> check() {
        return DeviceRatingFrom50V.check("CABLE-DEVICE-RATING-AC-33CFR")
            .title("Breaker is not too large for its conductor (gasoline boats, 50 V or more)")
            .basis(Sources.cfr33("183.455(c)(2)").othersSay("the standard ratings are those of NFPA 70, 240.6, from memory"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
