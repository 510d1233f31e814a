// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(d) as law. */
final class MainDeviceVoltageByLaw {

    private MainDeviceVoltageByLaw() {
    }

    static Check<AcOutput> check() {
        return MainDeviceVoltage.check("AC-DEVICE-VOLTAGE-183-455")
            .title("Main breaker is made for the set's voltage (gasoline boats)")
            .basis(Sources.cfr33("183.455(d)"))
            .applies(Conditions.boatWithGasolineEngine())
            .build();
    }
}
