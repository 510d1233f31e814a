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

/** ISO 13297: a breaker within 0.5 m of the set, or the conductor protected. */
final class MainDevicePlaceByIso {

    private static final Length MOST = Length.of(0.5);

    private MainDevicePlaceByIso() {
    }

    static Check<AcOutput> check() {
        return MainDevicePlace.check("AC-DEVICE-PLACE")
            .title("Main breaker sits close to the set, or the cable is sheathed up to it")
            .basis(Sources.ISO_13297.othersSay("33 CFR 183.455(b): 7 in, 40 in where the conductor is sheathed"))
            .limit("within 0.5 m (20 in) of the set, or the conductor protected up to the device")
            .applies(AcConditions.scopeOfIso13297())
            .applies(Conditions.unlessLawForGasoline("183.455(b)"))
            .needsWhen(s -> far(s.subject()), MainDevicePlace.sheathed())
            .holds(s -> far(s.subject()) && MainDevicePlace.isSheathed(s.subject())
                ? Comparison.holds(MainDevicePlace.inWords(s.subject()) + ", with the cable sheathed up to it", true)
                : Comparison.atMost(MainDevicePlace.inWords(s.subject()), s.subject().getProtectionDistance(), Limit.of(MOST, "ISO 13297")))
            .remedy("Move the device to the set, or sheathe the cable up to it",
                s -> Optional.of(MainDevicePlace.closer(s.subject(), MOST)))
            .build();
    }

    private static boolean far(AcOutput output) {
        return output.getProtectionDistance().isMoreThan(MOST);
    }
}
