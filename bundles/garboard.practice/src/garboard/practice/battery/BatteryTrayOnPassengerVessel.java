// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__TRAY_OR_BOX;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.350: a tray that the electrolyte does not eat. */
final class BatteryTrayOnPassengerVessel {

    private BatteryTrayOnPassengerVessel() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-TRAY-46CFR", StartingBattery.class)
            .title("Battery stands in a tray or box (small passenger vessels)")
            .why("Spilt acid eats wood, steel and wiring below the battery, unseen.")
            .basis(Sources.cfr46("183.350"))
            .gravity(Gravity.DEFECT)
            .limit("a tray of a material that withstands the electrolyte")
            .applies(Conditions.smallPassengerVessel())
            .needs(STARTING_BATTERY__TRAY_OR_BOX)
            .holds(s -> Answers.demanded(s.subject().getTrayOrBox(), "the battery stands in a tray or box",
                "no tray catches the electrolyte"))
            .remedy("Put a tray or box of plastic, lead or epoxy-coated material under the battery")
            .build();
    }
}
