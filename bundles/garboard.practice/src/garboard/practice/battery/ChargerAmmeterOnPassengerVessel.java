// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CHARGER_AMMETER;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.350: an ammeter shows the charging current. */
final class ChargerAmmeterOnPassengerVessel {

    private ChargerAmmeterOnPassengerVessel() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-AMMETER-46CFR", StartingBattery.class)
            .title("Charger shows its current (small passenger vessels)")
            .why("Without an ammeter nobody sees that the battery takes no charge, or far too much.")
            .basis(Sources.cfr46("183.350"))
            .gravity(Gravity.DEFECT)
            .limit("an ammeter in the charging circuit")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.asked(STARTING_BATTERY__CHARGER_AMMETER))
            .needs(STARTING_BATTERY__CHARGER_AMMETER)
            .holds(s -> Answers.yes(s.subject().getChargerAmmeter(), "the charger has an ammeter",
                "no ammeter shows the charging current"))
            .remedy("Fit an ammeter in the charging circuit")
            .build();
    }
}
