// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 33 CFR 183.455(b): 7 in along the conductor, 40 in where it is sheathed all the way. */
final class MainDevicePlaceByLaw {

    private static final Length BARE = Length.of(7, "in");
    private static final Length SHEATHED = Length.of(40, "in");

    private MainDevicePlaceByLaw() {
    }

    static Check<AcOutput> check() {
        return MainDevicePlace.check("AC-DEVICE-PLACE-183-455")
            .title("Main breaker sits close to the set (gasoline boats)")
            .basis(Sources.cfr33("183.455(b)").othersSay("ISO 13297: 0.5 m, or the conductor protected"))
            .limit("at the source; else within 178 mm (7 in), or 1.02 m (40 in) where the cable is sheathed all the way")
            .applies(Conditions.boatWithGasolineEngine())
            .needsWhen(s -> s.subject().getProtectionDistance().isMoreThan(BARE), MainDevicePlace.sheathed())
            .holds(s -> Comparison.atMost(MainDevicePlace.inWords(s.subject()), s.subject().getProtectionDistance(), limit(s.subject())))
            .remedy("Move the device to the set", s -> Optional.of(MainDevicePlace.closer(s.subject(), limit(s.subject()).value())))
            .build();
    }

    private static Limit<Length> limit(AcOutput output) {
        if (!output.getProtectionDistance().isMoreThan(BARE)) {
            return Limit.of(BARE, "33 CFR 183.455(b)");
        }
        return MainDevicePlace.isSheathed(output) ? Limit.of(SHEATHED, "33 CFR 183.455(b), sheathed all the way")
            : Limit.of(BARE, "33 CFR 183.455(b), not sheathed");
    }
}
