// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CHARGER_RATED_CURRENT;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__TRAY_OR_BOX;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.StartingBattery;
import garboard.physics.battery.ChargerClass;
import garboard.physics.battery.HydrogenVentilation;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.VolumeFlow;

/** 46 CFR 183.352 and 183.354: a battery that is charged with more than 2 kW has a ventilated room, locker or box of its own. */
final class LargeBatteryOnPassengerVessel {

    private LargeBatteryOnPassengerVessel() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-LARGE-46CFR", StartingBattery.class)
            .title("Large battery has a ventilated place of its own (small passenger vessels)")
            .why("A charger of more than 2 kW drives out more hydrogen than a space for other things can bear.")
            .basis(Sources.cfr46("183.352 and 183.354")
                .othersSay("46 CFR 111.15-3 knows three classes: small below 0.2 kW, moderate, large above 2 kW"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("above 2 kW of charging power, highest current times rated battery voltage: a room, locker or box for "
                + "batteries alone, with ventilation")
            .applies(Conditions.smallPassengerVessel())
            .applies(BatteryConditions.emergencySource())
            .needs(STARTING_BATTERY__CHARGER_RATED_CURRENT)
            .needs(Bank.size())
            .needsWhen(LargeBatteryOnPassengerVessel::large, path(STARTING_BATTERY__TRAY_OR_BOX),
                path(STARTING_BATTERY__VENTILATION_AREA_EACH_WAY))
            .holds(LargeBatteryOnPassengerVessel::compare)
            .remedy("Give the battery a ventilated locker or box of its own", s -> Optional.of(Remedy.of(
                "Give the battery a locker or box of its own and lead " + Figures.both(air(s.subject()))
                    + " of air through it (46 CFR 111.15-10, from memory, with a quarter of the charger's current)")))
            .build();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        StartingBattery battery = s.subject();
        String charger = "the charger gives " + Figures.both(power(battery));
        if (!large(s)) {
            return Comparison.holds(charger + ": a small battery installation", true);
        }
        boolean boxed = battery.getTrayOrBox() == Answer.YES;
        boolean ventilated = battery.getVentilationAreaEachWay().si() > 0;
        return Comparison.holds(charger + ": a large battery installation, " + (boxed ? "with" : "without") + " a box of its own and "
            + (ventilated ? "with" : "without") + " ventilation", boxed && ventilated);
    }

    private static boolean large(Situation<StartingBattery> s) {
        return ChargerClass.subchapterT(power(s.subject())) == ChargerClass.LARGE;
    }

    private static Power power(StartingBattery battery) {
        return ChargerClass.power(battery.getChargerRatedCurrent(), Bank.nominal(battery));
    }

    /** The current at the end of the charge is not known; a quarter of the charger's most is the least that the rule lets count. */
    private static VolumeFlow air(StartingBattery battery) {
        Current most = battery.getChargerRatedCurrent();
        return HydrogenVentilation.subchapterJ(HydrogenVentilation.chargingCurrentSubchapterJ(
            new HydrogenVentilation.ChargerCurrents(Current.of(0), most)), Bank.cells(battery));
    }
}
