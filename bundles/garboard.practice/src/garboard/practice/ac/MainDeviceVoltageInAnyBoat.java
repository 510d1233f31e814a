// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.455(d) as a yardstick. */
final class MainDeviceVoltageInAnyBoat {

    private MainDeviceVoltageInAnyBoat() {
    }

    static Check<AcOutput> check() {
        return MainDeviceVoltage.check("AC-DEVICE-VOLTAGE")
            .title("Main breaker is made for the set's voltage")
            .basis(Sources.yardstick("33 CFR 183.455(d)"))
            .applies(Conditions.unlessLawForGasoline("183.455(d)"))
            .build();
    }
}
