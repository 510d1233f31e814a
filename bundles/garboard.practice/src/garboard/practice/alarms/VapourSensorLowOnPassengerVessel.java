// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import garboard.checks.Check;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.480: the sensor sits above expected bilge water at the lowest part of the machinery space. */
final class VapourSensorLowOnPassengerVessel {

    private VapourSensorLowOnPassengerVessel() {
    }

    static Check<AlarmsAndSafety> check() {
        return VapourSensor.check("ALARM-VAPOUR-LOW-182-480")
            .title("Vapour sensor sits low in the space (small passenger vessels)")
            .basis(Sources.cfr46("182.480"))
            .applies(Conditions.smallPassengerVessel())
            .build();
    }
}
