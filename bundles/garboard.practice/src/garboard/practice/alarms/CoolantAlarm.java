// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import garboard.checks.Check;
import garboard.model.AlarmKind;
import garboard.model.AlarmsAndSafety;

/** Hot coolant stops the set or calls somebody. */
final class CoolantAlarm {

    private CoolantAlarm() {
    }

    static Check<AlarmsAndSafety> check() {
        return AlarmList.lists("ALARM-COOLANT", AlarmKind.COOLANT_TEMPERATURE)
            .title("Hot coolant raises an alarm")
            .why("An engine that boils warps its head; in its shield nobody sees the steam.")
            .limit("an alarm or shutdown of coolant temperature among the alarms")
            .remedy("Fit a coolant temperature switch that stops the set")
            .build();
    }
}
