// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__REMOTE_STOP;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The set can be stopped by somebody who does not enter its compartment. */
final class RemoteStop {

    private RemoteStop() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-REMOTE-STOP", AlarmsAndSafety.class)
            .title("Set can be stopped from outside its compartment")
            .why("In smoke, steam or water nobody reaches a button on the set.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a stop outside the compartment, tried with the set running")
            .applies(Conditions.asked(ALARMS_AND_SAFETY__REMOTE_STOP))
            .needs(ALARMS_AND_SAFETY__REMOTE_STOP)
            .holds(s -> Answers.yes(s.subject().getRemoteStop(), "the set can be stopped from outside", "the set cannot be stopped from outside"))
            .remedy("Fit a stop at the start panel or beside the hatch")
            .build();
    }
}
