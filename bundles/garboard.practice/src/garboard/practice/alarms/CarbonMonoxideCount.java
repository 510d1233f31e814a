// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__HABITABLE_SPACES;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.practice.Sources;

/** There are no fewer alarms than habitable spaces; a space without one is told there. */
final class CarbonMonoxideCount {

    private CarbonMonoxideCount() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-CO-COUNT", AlarmsAndSafety.class)
            .title("There are as many carbon-monoxide alarms as habitable spaces")
            .why("A count that does not come out shows a cabin that was forgotten.")
            .basis(Sources.ABYC_A_24)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least as many alarms as habitable spaces")
            .applies(notToldAlready())
            .needs(ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS, ALARMS_AND_SAFETY__HABITABLE_SPACES)
            .holds(s -> {
                int alarms = s.subject().getCarbonMonoxideAlarms();
                int spaces = s.subject().getHabitableSpaces();
                return Comparison.holds("alarms: " + alarms + "; habitable spaces: " + spaces, alarms >= spaces);
            })
            .remedy("Fit an alarm in each space that has none", s -> Optional.of(Remedy.of("Fit alarms in the spaces that have none, "
                + (s.subject().getHabitableSpaces() - s.subject().getCarbonMonoxideAlarms()) + " more")
                .setting(s.subject(), ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALARMS, s.subject().getHabitableSpaces())))
            .build();
    }

    private static Condition<AlarmsAndSafety> notToldAlready() {
        return Condition.<AlarmsAndSafety>when("unless a space is known to have none").known()
            .uses(path(ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE))
            .test(s -> s.subject().getCarbonMonoxideInEverySpace() != Answer.NO, "a habitable space is known to have no alarm");
    }
}
