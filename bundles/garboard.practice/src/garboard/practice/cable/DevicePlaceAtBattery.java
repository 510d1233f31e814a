// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SHEATHED_TO_PROTECTION;

import garboard.checks.Check;
import garboard.checks.Limit;
import garboard.model.CableRun;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** ABYC E-11: within 72 in of the battery where the conductor is sheathed. */
final class DevicePlaceAtBattery {

    private DevicePlaceAtBattery() {
    }

    static Check<CableRun> check() {
        return DevicePlace.check("CABLE-DEVICE-PLACE-BATTERY")
            .title("Fuse or breaker sits close to the battery")
            .basis(Sources.ABYC_E_11.othersSay("33 CFR 183.455(b): 178 mm (7 in), or 1.02 m (40 in) sheathed, where the source is no battery"))
            .limit("within 1.83 m (72 in) of the battery where the conductor is sheathed all the way, else within 178 mm (7 "
                + "in); cranking is exempt")
            .applies(CableConditions.fromBatteryTerminal())
            .needsWhen(DevicePlace::beyondBare, path(CABLE_RUN__SHEATHED_TO_PROTECTION))
            .holds(s -> DevicePlace.compare(s, limit(s.subject())))
            .remedy("Move the device closer to the battery", s -> DevicePlace.closer(s, limit(s.subject())))
            .build();
    }

    private static Limit<Length> limit(CableRun run) {
        return DevicePlace.isSheathed(run) ? Limit.of(DevicePlace.AT_BATTERY, "ABYC E-11, sheathed")
            : Limit.of(DevicePlace.BARE, "ABYC E-11 gives 72 in to sheathed conductors only; 33 CFR 183.455(b)");
    }
}
