// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEMPERATURE_ALARM;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.ExhaustRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** An alarm tells when the exhaust runs hot: the first sign that the raw water has stopped. */
final class ExhaustTemperatureAlarm {

    private ExhaustTemperatureAlarm() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-TEMPERATURE-ALARM", ExhaustRun.class)
            .title("Exhaust has a temperature alarm")
            .why("Without water a rubber hose burns through in a minute or two, long before the coolant gets hot.")
            .basis(Sources.ABYC_P_1)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("sensor at or close behind the injection, alarm where it is heard")
            .applies(Conditions.asked(EXHAUST_RUN__TEMPERATURE_ALARM))
            .needs(EXHAUST_RUN__TEMPERATURE_ALARM)
            .holds(s -> Answers.yes(s.subject().getTemperatureAlarm(), "an exhaust temperature alarm is fitted",
                "no exhaust temperature alarm is fitted"))
            .remedy("Fit a sensor at the injection or on the first hose, with an alarm at the helm")
            .build();
    }
}
