// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__SECURED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.350: batteries are secured against the motion of the vessel. */
final class BatterySecuredOnPassengerVessel {

    private BatterySecuredOnPassengerVessel() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-SECURED-46CFR", StartingBattery.class)
            .title("Battery is secured (small passenger vessels)")
            .why("A battery that breaks loose in a seaway tears its cables off and shorts, or spills acid among people.")
            .basis(Sources.cfr46("183.350"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("secured against motion")
            .applies(Conditions.smallPassengerVessel())
            .needs(STARTING_BATTERY__SECURED)
            .holds(s -> Answers.demanded(s.subject().getSecured(), "the battery is secured",
                "the battery can move"))
            .remedy("Strap or clamp the battery down so that it moves in no direction")
            .build();
    }
}
