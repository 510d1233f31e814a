// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import garboard.checks.Check;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** The sensor sits low, on any boat. */
final class VapourSensorLow {

    private VapourSensorLow() {
    }

    static Check<AlarmsAndSafety> check() {
        return VapourSensor.check("ALARM-VAPOUR-LOW")
            .title("Vapour sensor sits low in the space")
            .basis(Sources.yardstick("46 CFR 182.480"))
            .applies(Conditions.unlessLawForPassengers("182.480"))
            .build();
    }
}
