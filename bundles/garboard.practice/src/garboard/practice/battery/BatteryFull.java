// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__RESTED_VOLTAGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.BatteryChemistry;
import garboard.model.StartingBattery;
import garboard.physics.battery.OpenCircuitVoltage;
import garboard.practice.Figures;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** The rested battery shows the voltage of a full one of its kind. The 12.8 V often asked for is out of reach of a good flooded battery. */
final class BatteryFull {

    private static final Ratio FULL = Ratio.of(100, "%");

    private BatteryFull() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-FULL", StartingBattery.class)
            .title("Battery is full before the trial")
            .why("A trial that begins on a half-charged battery judges the charger and not the set.")
            .basis(Basis.commonPractice().othersSay("12.8 V asked of every battery; 12.65 V for a flooded one with acid of "
                + "1.265, which rests at 12.63 V"))
            .gravity(Gravity.ADVICE)
            .limit("rested: 12.6 V flooded (US Army TM 5-3805-262-20), 12.8 V AGM, 12.85 V gel (typical, from memory), for each 12 V block")
            .applies(BatteryConditions.leadAcid())
            .applies(SteppingBack.where(BatteryCharged.check()))
            .applies(SteppingBack.where(BatteryMayCrank.check()))
            .needs(STARTING_BATTERY__RESTED_VOLTAGE)
            .needs(Bank.size())
            .holds(BatteryFull::compare)
            .remedy("Charge it until the charger has gone over to float, let it rest and read again")
            .build();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        StartingBattery battery = s.subject();
        Voltage rested = battery.getRestedVoltage();
        if (!BatteryConditions.canBeRested(battery, rested)) {
            return Comparison.holds(BatteryConditions.notRested(rested), false);
        }
        Voltage full = OpenCircuitVoltage.restedVoltage(Bank.curve(battery.getChemistry()), FULL, 1);
        return Comparison.atLeast("the battery rests at " + Figures.both(rested), rested, Limit.of(Bank.ofBlock(battery, full), origin(battery)));
    }

    private static String origin(StartingBattery battery) {
        return battery.getChemistry() == BatteryChemistry.FLOODED_LEAD_ACID ? "US Army TM 5-3805-262-20"
            : "typical of a full " + Bank.kind(battery) + " battery, from memory";
    }
}
