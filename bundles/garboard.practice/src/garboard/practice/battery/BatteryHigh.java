// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__HIGH_ABOVE_BILGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The battery stands high above the bilge. */
final class BatteryHigh {

    private BatteryHigh() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-HIGH", StartingBattery.class)
            .title("Battery stands high above the bilge")
            .why("Bilge water shorts a battery, eats its terminals and leaves the set dead when the pumps need it.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("as high above the bilge as the place allows")
            .applies(Conditions.unlessLawForPassengers("183.350"))
            .applies(Conditions.asked(STARTING_BATTERY__HIGH_ABOVE_BILGE))
            .needs(STARTING_BATTERY__HIGH_ABOVE_BILGE)
            .holds(s -> Answers.yes(s.subject().getHighAboveBilge(), "the battery stands high above the bilge",
                "bilge water can reach the battery"))
            .remedy("Move the battery up, or build its tray higher")
            .build();
    }
}
