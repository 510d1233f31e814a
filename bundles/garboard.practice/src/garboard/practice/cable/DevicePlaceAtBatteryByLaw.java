// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.checks.Limit;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 33 CFR 183.460(a), from memory: within 72 in of the battery. */
final class DevicePlaceAtBatteryByLaw {

    private DevicePlaceAtBatteryByLaw() {
    }

    static Check<CableRun> check() {
        return DevicePlace.check("CABLE-DEVICE-PLACE-BATTERY-33CFR")
            .title("Fuse or breaker sits close to the battery (gasoline boats)")
            .basis(Sources.cfr33FromMemory("183.460(a)"))
            .limit("within 1.83 m (72 in) of the battery; the cranking circuit is exempt")
            .applies(Conditions.boatWithGasolineEngine())
            .applies(CableConditions.fromBatteryTerminal())
            .holds(s -> DevicePlace.compare(s, limit()))
            .remedy("Move the device closer to the battery", s -> DevicePlace.closer(s, limit()))
            .build();
    }

    private static Limit<Length> limit() {
        return Limit.of(DevicePlace.AT_BATTERY, "33 CFR 183.460(a), from memory");
    }
}
