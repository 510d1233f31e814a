// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import garboard.checks.Check;
import garboard.model.AlarmKind;
import garboard.model.AlarmsAndSafety;

/** Low oil pressure stops the set or calls somebody. */
final class OilPressureAlarm {

    private OilPressureAlarm() {
    }

    static Check<AlarmsAndSafety> check() {
        return AlarmList.lists("ALARM-OIL-PRESSURE", AlarmKind.OIL_PRESSURE)
            .title("Low oil pressure raises an alarm")
            .why("Without oil the bearings are gone within seconds, long before anybody hears it.")
            .limit("an alarm or shutdown of oil pressure among the alarms")
            .remedy("Fit an oil-pressure switch that stops the set")
            .build();
    }
}
