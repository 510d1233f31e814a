// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__ISOLATING_SWITCH;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The battery can be switched off. */
final class BatteryIsolator {

    private BatteryIsolator() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-ISOLATOR", StartingBattery.class)
            .title("Battery can be switched off")
            .why("Without a switch nobody can take the current off a burning cable or a starter that does not let go.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("an isolating switch in the positive conductor")
            .applies(Conditions.asked(STARTING_BATTERY__ISOLATING_SWITCH))
            .needs(STARTING_BATTERY__ISOLATING_SWITCH)
            .holds(s -> Answers.yes(s.subject().getIsolatingSwitch(), "an isolating switch is fitted",
                "no isolating switch is fitted"))
            .remedy("Fit an isolating switch, rated for the cranking current, in the positive conductor close to the battery")
            .build();
    }
}
