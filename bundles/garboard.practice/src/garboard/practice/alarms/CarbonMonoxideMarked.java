// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** UL 2034, marine type. */
final class CarbonMonoxideMarked {

    private CarbonMonoxideMarked() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-CO-MARINE", AlarmsAndSafety.class)
            .title("Carbon-monoxide alarms are of marine type")
            .why("A household alarm does not stand the damp and the vibration, and fails without saying so.")
            .basis(Sources.UL_2034)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("UL 2034, marked for marine use: 70 ppm within 60 to 240 min, 150 ppm within 10 to 50 min, 400 ppm within 4 to 15 min")
            .applies(Conditions.asked(ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED))
            .needs(ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED)
            .holds(s -> Answers.yes(s.subject().getCarbonMonoxideMarked(), "the alarms are marked for marine use",
                "an alarm is not marked for marine use"))
            .remedy("Replace the alarms by ones marked UL 2034 marine")
            .build();
    }
}
