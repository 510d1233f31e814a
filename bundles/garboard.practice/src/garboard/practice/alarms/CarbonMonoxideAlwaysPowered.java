// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** No switch at the panel silences a carbon-monoxide alarm. */
final class CarbonMonoxideAlwaysPowered {

    private CarbonMonoxideAlwaysPowered() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-CO-POWERED", AlarmsAndSafety.class)
            .title("Carbon-monoxide alarms stay alive when the panel is off")
            .why("People switch the panel off before they sleep, and the alarm with it.")
            .basis(Sources.TRADE_PRESS)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("wired ahead of every switch, or with batteries of their own")
            .applies(Conditions.asked(ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED))
            .needs(ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED)
            .holds(s -> Answers.yes(s.subject().getCarbonMonoxideAlwaysPowered(), "the alarms are always powered",
                "a switch at the panel silences an alarm"))
            .remedy("Feed the alarms ahead of the panel's switches, through a fuse of their own")
            .build();
    }
}
