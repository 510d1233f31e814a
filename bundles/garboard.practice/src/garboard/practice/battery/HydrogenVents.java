// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCK_CAPACITY;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__STRINGS_IN_PARALLEL;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__VENTILATION_AREA_EACH_WAY;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.BatteryChemistry;
import garboard.model.StartingBattery;
import garboard.physics.battery.GassingRate;
import garboard.physics.battery.HydrogenVentilation;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.Area;

/** Openings that let the hydrogen of a charging battery out by itself. */
final class HydrogenVents {

    private HydrogenVents() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-HYDROGEN", StartingBattery.class)
            .title("Battery space lets the hydrogen out")
            .why("A charging battery makes hydrogen, which gathers under the lid and explodes at the first spark.")
            .basis(Sources.EN_50272_2.othersSay("written for stationary rooms and used here as a yardstick; EN 50272-3 reckons "
                + "10 mA/Ah for valve-regulated cells"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("inlet and outlet each 28 cm2 for each m3/h; air 0.05 x cells x gassing current, which is 20 mA/Ah flooded, "
                + "8 mA/Ah valve-regulated at boost charge")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__VENTILATION_AREA_EACH_WAY, STARTING_BATTERY__BLOCK_CAPACITY, STARTING_BATTERY__STRINGS_IN_PARALLEL)
            .needs(Bank.size())
            .holds(s -> Comparison.atLeast("inlet and outlet have " + Figures.both(s.subject().getVentilationAreaEachWay())
                + " each; the battery asks for " + Figures.both(needed(s.subject())), s.subject().getVentilationAreaEachWay(),
                Limit.of(needed(s.subject()), "EN 50272-2 at boost charge")))
            .remedy("Enlarge the openings, the outlet at the highest place", s -> {
                Area each = Rounding.up(needed(s.subject()), 1, "cm2");
                return Optional.of(Remedy.of("Open " + Figures.both(each) + " low and as much at the highest place")
                    .setting(s.subject(), STARTING_BATTERY__VENTILATION_AREA_EACH_WAY, each));
            })
            .build();
    }

    private static Area needed(StartingBattery battery) {
        GassingRate gassing = battery.getChemistry() == BatteryChemistry.FLOODED_LEAD_ACID ? GassingRate.VENTED_BOOST
            : GassingRate.VALVE_REGULATED_BOOST;
        return HydrogenVentilation.naturalOpening(HydrogenVentilation.en50272(gassing, Bank.cells(battery), Bank.capacity(battery)));
    }
}
