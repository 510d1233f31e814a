// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SHEATHED_TO_PROTECTION;

import garboard.checks.Check;
import garboard.checks.Limit;
import garboard.model.CableRun;
import garboard.quantity.Length;

/** 33 CFR 183.455(b): 7 in along the conductor, 40 in where it is sheathed all the way. Law on gasoline boats, else a yardstick. */
final class DevicePlaceByPanel {

    private DevicePlaceByPanel() {
    }

    /** Everything but authority. */
    static Check.Builder<CableRun> check(String id) {
        return DevicePlace.check(id)
            .limit("at the source; else within 178 mm (7 in), or 1.02 m (40 in) where the conductor is sheathed all the way")
            .applies(CableConditions.notFromBatteryTerminal())
            .needsWhen(DevicePlace::beyondBare, path(CABLE_RUN__SHEATHED_TO_PROTECTION))
            .holds(s -> DevicePlace.compare(s, limit(s.subject())))
            .remedy("Move the device to the source", s -> DevicePlace.closer(s, limit(s.subject())));
    }

    private static Limit<Length> limit(CableRun run) {
        return DevicePlace.isSheathed(run) ? Limit.of(DevicePlace.SHEATHED, "33 CFR 183.455(b), sheathed all the way")
            : Limit.of(DevicePlace.BARE, "33 CFR 183.455(b)");
    }
}
