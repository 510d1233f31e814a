// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__SECURED;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The battery is held down. */
final class BatterySecured {

    private BatterySecured() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-SECURED", StartingBattery.class)
            .title("Battery is held down")
            .why("A battery that breaks loose in a seaway tears its cables off and shorts, or spills acid.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("straps or clamps that hold it in every direction")
            .applies(Conditions.unlessLawForPassengers("183.350"))
            .applies(Conditions.asked(STARTING_BATTERY__SECURED))
            .needs(STARTING_BATTERY__SECURED)
            .holds(s -> Answers.yes(s.subject().getSecured(), "the battery is held in every direction",
                "the battery can move"))
            .remedy("Strap or clamp the battery down so that it moves in no direction")
            .build();
    }
}
