// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** A fire extinguisher within reach of the compartment. */
final class FireExtinguisherInReach {

    private FireExtinguisherInReach() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-EXTINGUISHER", AlarmsAndSafety.class)
            .title("Fire extinguisher is within reach")
            .why("A fire at the set is put out in its first minute or not at all.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("in date, reached without passing the compartment")
            .applies(Conditions.asked(ALARMS_AND_SAFETY__FIRE_EXTINGUISHER))
            .needs(ALARMS_AND_SAFETY__FIRE_EXTINGUISHER)
            .holds(s -> Answers.yes(s.subject().getFireExtinguisher(), "a fire extinguisher is within reach", "no fire extinguisher is within reach"))
            .remedy("Hang an extinguisher outside the compartment, on the way out")
            .build();
    }
}
