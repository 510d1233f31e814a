// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** 46 CFR 183.350(a): wherever batteries are charged there is natural or induced ventilation. */
final class BatteryVentilatedOnPassengerVessel {

    private BatteryVentilatedOnPassengerVessel() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-VENTILATION-46CFR", StartingBattery.class)
            .title("Battery space is ventilated (small passenger vessels)")
            .why("A charging battery makes hydrogen, which gathers under the lid and explodes at the first spark.")
            .basis(Sources.cfr46("183.350(a)").othersSay("EN 50272-2 gives a size for the openings"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("natural or induced ventilation wherever batteries are charged; the rule names no size")
            .applies(Conditions.smallPassengerVessel())
            .needs(STARTING_BATTERY__VENTILATION_AREA_EACH_WAY)
            .holds(s -> Comparison.moreThan("inlet and outlet have " + Figures.both(s.subject().getVentilationAreaEachWay()) + " each",
                s.subject().getVentilationAreaEachWay(), Limit.of(Area.of(0), "46 CFR 183.350(a)")))
            .remedy("Open the space low and at its highest place, or fit a fan")
            .build();
    }
}
