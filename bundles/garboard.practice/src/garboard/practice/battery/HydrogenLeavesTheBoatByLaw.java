// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__VENTED_OVERBOARD;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 33 CFR 183.420(e): the gas of a battery is led out of the boat. */
final class HydrogenLeavesTheBoatByLaw {

    private HydrogenLeavesTheBoatByLaw() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-VENTED-33CFR", StartingBattery.class)
            .title("Battery gas is led off the boat (gasoline boats)")
            .why("Hydrogen that stays in the boat explodes at the first spark.")
            .basis(Sources.cfr33("183.420(e)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("hydrogen is discharged from the boat")
            .applies(Conditions.boatWithGasolineEngine())
            .applies(Conditions.asked(STARTING_BATTERY__VENTED_OVERBOARD))
            .needs(STARTING_BATTERY__VENTED_OVERBOARD)
            .holds(s -> Answers.yes(s.subject().getVentedOverboard(), "the hydrogen leaves the boat",
                "the hydrogen stays in the boat"))
            .remedy("Lead a duct from the highest point of the box or space to the open air")
            .build();
    }
}
