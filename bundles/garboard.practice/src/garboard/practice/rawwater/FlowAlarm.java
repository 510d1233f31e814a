// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__ALARMS;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__KIND;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEMPERATURE_ALARM;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.AlarmKind;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.model.ExhaustRun;

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
            .uses(EXHAUST_RUN__TEMPERATURE_ALARM)
            .needsWhen(s -> !exhaustAlarm(s), path(ALARMS_AND_SAFETY__ALARMS, ALARM_DEVICE__KIND))
            .holds(s -> {
                boolean exhaust = exhaustAlarm(s) || listed(s, AlarmKind.EXHAUST_TEMPERATURE);
                boolean flow = listed(s, AlarmKind.RAW_WATER_FLOW);
                return Comparison.holds(flow ? "a raw-water flow alarm is fitted" : exhaust ? "an exhaust temperature alarm is fitted"
                    : "no alarm notices that the raw water stops", flow || exhaust);
            })
            .remedy("Fit an exhaust temperature alarm at the injection, or a flow switch in the raw-water line")
            .build();
    }
    /** The exhaust's own question tells of the same alarm, whether or not it stands in the list too. */
    private static boolean exhaustAlarm(Situation<AlarmsAndSafety> s) {
        return s.optional(s.record().getExhaust(), ExhaustRun::getTemperatureAlarm).filter(Answer.YES::equals).isPresent();
    }

    private static boolean listed(Situation<AlarmsAndSafety> s, AlarmKind kind) {
        return s.subject().getAlarms().stream().anyMatch(alarm -> alarm.getKind() == kind);
    }
}
