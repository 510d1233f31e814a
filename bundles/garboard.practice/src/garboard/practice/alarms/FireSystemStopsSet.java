// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.practice.Answers;

/** A fixed system stops the set before it draws the agent out. */
final class FireSystemStopsSet {

    private FireSystemStopsSet() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-FIRE-STOPS-SET", AlarmsAndSafety.class)
            .title("Fixed fire system stops the set")
            .why("A running set and its fan breathe the agent in and blow it overboard within seconds.")
            .basis(Basis.commonPractice().othersSay("46 CFR 182.460: the blower shuts down when gas is released"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("release of the agent stops set and blowers")
            .applies(Condition.<AlarmsAndSafety>when("where a fixed fire system is fitted").known(path(ALARMS_AND_SAFETY__FIXED_FIRE_SYSTEM))
                .test(s -> s.subject().getFixedFireSystem() == Answer.YES, "no fixed fire system is fitted"))
            .needs(ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET)
            .holds(s -> Answers.demanded(s.subject().getFireSystemStopsSet(), "release of the agent stops the set",
                "release of the agent does not stop the set"))
            .remedy("Wire the pressure switch of the system into the stop circuit of set and blowers")
            .build();
    }
}
