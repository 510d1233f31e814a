// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import garboard.checks.Check;
import garboard.model.AcOutput;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.320(c) as a yardstick. */
final class MetersInAnyBoat {

    private MetersInAnyBoat() {
    }

    static Check<AcOutput> check() {
        return Meters.check("AC-METERS")
            .title("Voltage, current and frequency can be read")
            .basis(Sources.yardstick("46 CFR 183.320(c)"))
            .applies(Conditions.unlessLawForPassengers("183.320(c)"))
            .build();
    }
}
