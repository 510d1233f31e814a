// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The isolating switch is within reach. */
final class BatteryIsolatorReachable {

    private BatteryIsolatorReachable() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-ISOLATOR-REACH", StartingBattery.class)
            .title("Isolating switch is within reach")
            .why("A switch behind a panel or under the floor is not found in smoke.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("within reach without tools")
            .applies(BatteryConditions.isolatingSwitchFitted())
            .applies(Conditions.asked(STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE))
            .needs(STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE)
            .holds(s -> Answers.yes(s.subject().getIsolatingSwitchReachable(), "the isolating switch is within reach",
                "the isolating switch cannot be reached at once"))
            .remedy("Move the switch, or fit a remote one, where it is reached from outside the engine space")
            .build();
    }
}
