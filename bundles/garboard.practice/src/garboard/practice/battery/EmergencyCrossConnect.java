// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The set can be started from another battery in an emergency; the connection is normally open. */
final class EmergencyCrossConnect {

    private EmergencyCrossConnect() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CROSS-CONNECT", StartingBattery.class)
            .title("Set can be started from another battery in an emergency")
            .why("One flat battery otherwise leaves the vessel without the set until the shore.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.ADVICE)
            .limit("a cross-connection that is normally open")
            .applies(Conditions.asked(STARTING_BATTERY__EMERGENCY_CROSS_CONNECT))
            .needs(STARTING_BATTERY__EMERGENCY_CROSS_CONNECT)
            .holds(s -> Answers.yes(s.subject().getEmergencyCrossConnect(), "a normally open cross-connection to another battery is fitted",
                "no other battery can start the set"))
            .remedy("Fit a cross-connecting switch to another bank of the same voltage and leave it open")
            .build();
    }
}
