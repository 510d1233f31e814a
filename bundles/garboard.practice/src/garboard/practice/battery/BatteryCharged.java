// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__RESTED_VOLTAGE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.BatteryChemistry;
import garboard.model.StartingBattery;
import garboard.physics.battery.OpenCircuitVoltage;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** State of charge by the rested voltage, read from the curve of the battery's kind. */
final class BatteryCharged {

    private static final Ratio LEAST = Ratio.of(75, "%");

    /** Below this a 12 V block has lost a cell; tables of charge end well above it. */
    private static final double EMPTY_BLOCK_V = 10.5;

    private BatteryCharged() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CHARGE", StartingBattery.class)
            .title("Battery holds at least three quarters of its charge")
            .why("A battery below 75 % may be worn out, and cranks slowly in the cold; slow cranking fills a wet exhaust with water.")
            .basis(Sources.US_ARMY_STATE_OF_CHARGE.othersSay("the curves of AGM and gel are typical values from memory"))
            .gravity(Gravity.DEFECT)
            .limit("at least 75 % of charge: rested at 12.4 V flooded, 12.6 V AGM, 12.65 V gel, for each 12 V block")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__RESTED_VOLTAGE)
            .needs(Bank.size())
            .holds(BatteryCharged::compare)
            .remedy("Charge it, let it rest and read again; if it does not hold, look for a drain and load-test the battery")
            .build();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        StartingBattery battery = s.subject();
        Voltage rested = battery.getRestedVoltage();
        if (!BatteryConditions.canBeRested(battery, rested)) {
            return Comparison.holds(BatteryConditions.notRested(rested), false);
        }
        Ratio charge = stateOfCharge(battery);
        return Comparison.atLeast("rested at " + Figures.both(rested) + " the battery holds " + Figures.both(charge) + " of its charge", charge,
            Limit.of(LEAST, origin(battery)));
    }

    private static String origin(StartingBattery battery) {
        return battery.getChemistry() == BatteryChemistry.FLOODED_LEAD_ACID ? "US Army TM 5-3805-262-20"
            : "US Army TM 5-3805-262-20, with the curve of " + Bank.kind(battery) + " from memory";
    }

    /** State of charge with the accuracy of the voltmeter carried over. */
    static Ratio stateOfCharge(StartingBattery battery) {
        Voltage rested = battery.getRestedVoltage();
        double halfWidthV = rested.accuracySi().orElse(0);
        Ratio charge = at(battery, rested.si());
        if (halfWidthV == 0) {
            return charge;
        }
        return charge.withAccuracy(Ratio.of((at(battery, rested.si() + halfWidthV).si() - at(battery, rested.si() - halfWidthV).si()) / 2));
    }

    private static Ratio at(StartingBattery battery, double bankV) {
        double blockV = Math.clamp(Bank.inBlock(battery, Voltage.of(bankV)).si(), EMPTY_BLOCK_V, BatteryConditions.HIGHEST_RESTED.si());
        return OpenCircuitVoltage.stateOfCharge(Bank.curve(battery.getChemistry()), Voltage.of(blockV), 1);
    }
}
