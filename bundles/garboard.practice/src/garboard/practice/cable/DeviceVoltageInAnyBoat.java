// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The device's voltage as common practice. */
final class DeviceVoltageInAnyBoat {

    private DeviceVoltageInAnyBoat() {
    }

    static Check<CableRun> check() {
        return DeviceVoltage.check("CABLE-DEVICE-VOLTAGE")
            .title("Fuse or breaker is made for the circuit's voltage")
            .basis(Sources.yardstick("33 CFR 183.455(d)"))
            .applies(Conditions.boatWithoutGasolineEngine())
            .build();
    }
}
