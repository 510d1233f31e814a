// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.CableRun;
import garboard.physics.cable.OvercurrentDevice;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Current;

/** 33 CFR 183.455(c)(1), read literally: at most 150 % of Table 5 without its notes. */
final class DeviceRatingByLaw {

    private DeviceRatingByLaw() {
    }

    static Check<CableRun> check() {
        return DeviceRating.below50V("CABLE-DEVICE-RATING-33CFR")
            .title("Fuse or breaker is not too large for its conductor (gasoline boats, below 50 V)")
            .basis(Sources.cfr33("183.455(c)(1)").othersSay("ISO 13297: never above the permitted current"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 150 % of 33 CFR 183.425 Table 5, read literally: without the factor for engine spaces")
            .applies(Conditions.boatWithGasolineEngine())
            .holds(s -> DeviceRating.compare(s.subject(), s.subject().getProtectionRating(), limit(s.subject())))
            .remedy("Fit a smaller device or lay a larger conductor", s -> DeviceRating.smaller(s, limit(s.subject())))
            .build();
    }

    private static Optional<Limit<Current>> limit(CableRun run) {
        return Table5.conductor(run, CableRuns.size(run)).map(OvercurrentDevice::limitBelow50VLiteral)
            .map(most -> Limit.of(most, "33 CFR 183.455(c)(1): 150 % of Table 5"));
    }
}
