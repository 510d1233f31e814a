// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__HIGH_ABOVE_BILGE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.350: batteries stand as high as practicable. */
final class BatteryHighOnPassengerVessel {

    private BatteryHighOnPassengerVessel() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-HIGH-46CFR", StartingBattery.class)
            .title("Battery stands as high as practicable (small passenger vessels)")
            .why("A battery under water takes the alarms and the set with it.")
            .basis(Sources.cfr46("183.350"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("as high above the bilge as practicable, without splash")
            .applies(Conditions.smallPassengerVessel())
            .needs(STARTING_BATTERY__HIGH_ABOVE_BILGE)
            .holds(s -> Answers.demanded(s.subject().getHighAboveBilge(), "the battery stands high above the bilge",
                "bilge water can reach the battery"))
            .remedy("Move the battery up, or build its tray higher")
            .build();
    }
}
