// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.practice.Answers;

/** A fire can be fought without opening the compartment. */
final class FireFoughtFromOutside {

    private FireFoughtFromOutside() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-FIRE-PORT", AlarmsAndSafety.class)
            .title("Fire in the compartment can be fought without opening it")
            .why("A hatch that is opened gives the fire the air it lacks, and the flames come out to whoever opens it.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("a fixed system, or a port through which an extinguisher is discharged")
            .applies(Condition.<AlarmsAndSafety>when("unless marked as not applicable").known(path(ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM))
                .uses(path(ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT))
                .test(s -> fixed(s.subject()) || s.subject().getFireDischargePort() != Answer.NOT_APPLICABLE,
                    "the port is marked as not applicable by the person who filled it in"))
            .needsWhen(s -> !fixed(s.subject()), path(ALARMS_AND_SAFETY__FIRE_DISCHARGE_PORT))
            .holds(s -> fixed(s.subject()) ? Comparison.holds("a fixed fire-extinguishing system guards the compartment", true)
                : Answers.yes(s.subject().getFireDischargePort(), "an extinguisher can be discharged through a port",
                    "there is neither a fixed system nor a port"))
            .remedy("Fit a port with a cap beside the hatch, or a fixed system")
            .build();
    }

    private static boolean fixed(AlarmsAndSafety safety) {
        return safety.getFixedFireSystem() == Answer.YES;
    }
}
