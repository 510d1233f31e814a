// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.physics.cable.OvercurrentDevice;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Current;

/** 33 CFR 183.460(b), from memory: 120 % of the maximum rated current of a generator that does not limit itself. */
final class MainDeviceRatingByLaw {

    private MainDeviceRatingByLaw() {
    }

    static Check<AcOutput> check() {
        return MainDeviceRating.check("AC-DEVICE-RATING-183-460")
            .title("Main breaker is not too large for the set (gasoline boats)")
            .basis(Sources.cfr33FromMemory("183.460(b)").othersSay("46 CFR 183.320(f): 115 %"))
            .limit("at most 120 % of the set's rated current; a set that limits itself is left out")
            .applies(Conditions.boatWithGasolineEngine())
            .applies(AcConditions.deviceFitted())
            .holds(s -> MainDeviceRating.compare(s, FullLoad.current(s), Limit.of(most(s), "33 CFR 183.460(b), from memory: 120 %")))
            .remedy("Fit a smaller device", s -> Optional.of(MainDeviceRating.smaller(s, most(s))))
            .build();
    }

    static Current most(Situation<?> s) {
        return OvercurrentDevice.alternatorLimit(FullLoad.current(s));
    }
}
