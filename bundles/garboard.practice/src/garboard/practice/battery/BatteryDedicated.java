// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__DEDICATED_TO_GENERATOR;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The set has a starting battery of its own that nothing else discharges. */
final class BatteryDedicated {

    private BatteryDedicated() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-DEDICATED", StartingBattery.class)
            .title("Set has a starting battery of its own")
            .why("A bank that feeds the house is low just when the set is needed to charge it.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("no house loads on the starting battery")
            .applies(Conditions.asked(STARTING_BATTERY__DEDICATED_TO_GENERATOR))
            .needs(STARTING_BATTERY__DEDICATED_TO_GENERATOR)
            .holds(s -> Answers.yes(s.subject().getDedicatedToGenerator(), "the battery starts the set and feeds nothing else",
                "other loads discharge the starting battery"))
            .remedy("Give the set a battery of its own, charged through a splitter or a charging relay")
            .build();
    }
}
