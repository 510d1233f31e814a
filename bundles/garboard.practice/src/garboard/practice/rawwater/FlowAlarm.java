// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__ALARMS;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__KIND;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.AlarmKind;
import garboard.model.AlarmsAndSafety;

/** Something cries out when the raw water stops: a flow alarm or an exhaust temperature alarm. */
final class FlowAlarm {

    private FlowAlarm() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("RAWWATER-FLOW-ALARM", AlarmsAndSafety.class)
            .title("Loss of raw water raises an alarm")
            .why("Without water the exhaust hose burns within a minute or two, long before the coolant is hot.")
            .basis(Basis.commonPractice()
                .othersSay("46 CFR 119.425(b)(5) asks for a low-flow warning where the exhaust water has a pump of its own"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("a raw-water flow alarm or an exhaust temperature alarm")
            .needs(path(ALARMS_AND_SAFETY__ALARMS, ALARM_DEVICE__KIND))
            .holds(s -> {
                Optional<AlarmKind> found = s.subject().getAlarms().stream().map(alarm -> alarm.getKind())
                    .filter(kind -> kind == AlarmKind.RAW_WATER_FLOW || kind == AlarmKind.EXHAUST_TEMPERATURE).findFirst();
                return Comparison.holds(found.map(kind -> kind == AlarmKind.RAW_WATER_FLOW ? "a raw-water flow alarm is fitted"
                    : "an exhaust temperature alarm is fitted").orElse("no alarm notices that the raw water stops"), found.isPresent());
            })
            .remedy("Fit an exhaust temperature alarm at the injection, or a flow switch in the raw-water line")
            .build();
    }
}
