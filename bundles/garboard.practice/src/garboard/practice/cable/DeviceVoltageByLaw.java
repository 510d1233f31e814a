// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Check;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(d) as law. */
final class DeviceVoltageByLaw {

    private DeviceVoltageByLaw() {
    }

    static Check<CableRun> check() {
        return DeviceVoltage.check("CABLE-DEVICE-VOLTAGE-33CFR")
            .title("Fuse or breaker is made for the circuit's voltage (gasoline boats)")
            .basis(Sources.cfr33("183.455(d)").othersSay("the end of the paragraph was not at hand"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
