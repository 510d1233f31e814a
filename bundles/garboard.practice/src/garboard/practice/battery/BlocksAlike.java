// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__SAME_TYPE_AND_AGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The blocks of a bank are of one type and age. */
final class BlocksAlike {

    private BlocksAlike() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-UNIFORM", StartingBattery.class)
            .title("Blocks of the bank are of one type and age")
            .why("An old block among new ones sets the pace for all of them and ruins them in turn.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("same type, capacity and age in one bank")
            .applies(BatteryConditions.severalBlocks())
            .applies(Conditions.asked(STARTING_BATTERY__SAME_TYPE_AND_AGE))
            .needs(STARTING_BATTERY__SAME_TYPE_AND_AGE)
            .holds(s -> Answers.yes(s.subject().getSameTypeAndAge(), "all blocks are of the same type and age",
                "the blocks differ in type or age"))
            .remedy("Replace all blocks of the bank at the same time, by ones of the same type")
            .build();
    }
}
