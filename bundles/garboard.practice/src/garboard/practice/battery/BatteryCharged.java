// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.BATTERY_BLOCK__LABEL;
import static garboard.model.GarboardPackage.Literals.BATTERY_BLOCK__RESTED_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCKS;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__RESTED_VOLTAGE;

import java.util.Comparator;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.BatteryBlock;
import garboard.model.BatteryChemistry;
import garboard.model.StartingBattery;
import garboard.physics.battery.OpenCircuitVoltage;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** State of charge by the rested voltage of the bank and of its blocks, read from the curve of the battery's kind. */
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
            .limit("at least 75 % of charge: rested at 12.4 V flooded, 12.6 V AGM, 12.65 V gel, for each 12 V block; the weakest block counts")
            .applies(BatteryConditions.leadAcid())
            .applies(SteppingBack.where(BatteryMayCrank.check()))
            .needs(STARTING_BATTERY__RESTED_VOLTAGE)
            .needs(Bank.size())
            .uses(path(STARTING_BATTERY__BLOCKS, BATTERY_BLOCK__RESTED_VOLTAGE), path(STARTING_BATTERY__BLOCKS, BATTERY_BLOCK__LABEL))
            .holds(BatteryCharged::compare)
            .remedy("Charge it, let it rest and read again; if it does not hold, look for a drain and load-test the battery")
            .build();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        StartingBattery battery = s.subject();
        if (!BatteryConditions.canBeRested(battery, battery.getRestedVoltage())) {
            return Comparison.holds(BatteryConditions.notRested(battery.getRestedVoltage()), false);
        }
        Reading weakest = weakest(battery);
        Ratio charge = weakest.charge();
        return Comparison.atLeast(weakest.found() + " of its charge", charge, Limit.of(LEAST, origin(battery)));
    }

    /**
     * A rested voltage and what it tells.
     *
     * @param charge with the accuracy of the voltmeter carried over
     */
    private record Reading(String found, Ratio charge) {
    }

    /** A string is as good as its weakest block, where blocks were read one by one. */
    private static Reading weakest(StartingBattery battery) {
        Ratio mean = stateOfCharge(battery, battery.getRestedVoltage(), Bank.inBlock(battery, battery.getRestedVoltage()));
        Reading bank = new Reading("rested at " + Figures.both(battery.getRestedVoltage()) + " the battery holds " + Figures.both(mean), mean);
        return battery.getBlocks().stream().filter(block -> block.getRestedVoltage() != null).map(block -> reading(battery, block))
            .filter(block -> block.charge().isLessThan(mean)).min(Comparator.comparing(Reading::charge)).orElse(bank);
    }

    private static Reading reading(StartingBattery battery, BatteryBlock block) {
        Voltage rested = block.getRestedVoltage();
        Ratio charge = stateOfCharge(battery, rested, Bank.ofOneBlock(battery, rested));
        String name = block.getLabel() == null || block.getLabel().isBlank() ? "the weakest block" : "block \"" + block.getLabel() + "\"";
        return new Reading("rested at " + Figures.both(rested) + " " + name + " holds " + Figures.both(charge), charge);
    }

    private static String origin(StartingBattery battery) {
        return battery.getChemistry() == BatteryChemistry.FLOODED_LEAD_ACID ? "US Army TM 5-3805-262-20"
            : "US Army TM 5-3805-262-20, with the curve of " + Bank.kind(battery) + " from memory";
    }

    /** State of charge with the accuracy of the voltmeter carried over; {@code inBlock} is the reading brought to a 12 V block. */
    private static Ratio stateOfCharge(StartingBattery battery, Voltage read, Voltage inBlock) {
        Ratio charge = at(battery, inBlock.si());
        double halfWidthV = read.accuracySi().orElse(0) * inBlock.si() / read.si();
        if (!(halfWidthV > 0)) {
            return charge;
        }
        return charge.withAccuracy(Ratio.of((at(battery, inBlock.si() + halfWidthV).si() - at(battery, inBlock.si() - halfWidthV).si()) / 2));
    }

    private static Ratio at(StartingBattery battery, double blockV) {
        double insideTheCurve = Math.clamp(blockV, EMPTY_BLOCK_V, BatteryConditions.HIGHEST_RESTED.si());
        return OpenCircuitVoltage.stateOfCharge(Bank.curve(battery.getChemistry()), Voltage.of(insideTheCurve), 1);
    }
}
