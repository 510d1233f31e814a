// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCKS_IN_SERIES;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCK_VOLTAGE;

import garboard.checks.FeaturePath;
import garboard.model.BatteryChemistry;
import garboard.model.StartingBattery;
import garboard.physics.Argument;
import garboard.physics.battery.OpenCircuitCurve;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

/** The starting battery of a record as battery physics sees it: how many 12 V blocks it makes, its cells, its curve. */
final class Bank {

    /** Figures of practice and tables are for blocks of this nominal voltage. */
    private static final double BLOCK_V = 12;

    private static final double LEAD_ACID_CELL_V = 2;

    private Bank() {
    }

    /** What has to be entered for {@link #nominal}, {@link #ofBlock} and {@link #inBlock}. */
    static FeaturePath[] size() {
        return new FeaturePath[] { path(STARTING_BATTERY__BLOCK_VOLTAGE), path(STARTING_BATTERY__BLOCKS_IN_SERIES) };
    }

    /** Nominal voltage: of blocks in series it adds, whatever stands in parallel. */
    static Voltage nominal(StartingBattery battery) {
        return Voltage.of(inSeries(battery) * Argument.positive("voltage of a block", battery.getBlockVoltage()));
    }

    /** A figure for a 12 V block, for the whole bank: 12.6 V makes 25.2 V in a bank of 24 V. */
    static Voltage ofBlock(StartingBattery battery, Voltage block) {
        return Voltage.of(block.si() * nominal(battery).si() / BLOCK_V);
    }

    /** A voltage of the whole bank, for a 12 V block: 25.2 V in a bank of 24 V makes 12.6 V. */
    static Voltage inBlock(StartingBattery battery, Voltage bank) {
        return Voltage.of(bank.si() * BLOCK_V / nominal(battery).si());
    }

    /** A voltage of one block, for a 12 V block: 6.3 V of a 6 V block make 12.6 V. */
    static Voltage ofOneBlock(StartingBattery battery, Voltage block) {
        return Voltage.of(block.si() * BLOCK_V / Argument.positive("voltage of a block", battery.getBlockVoltage()));
    }

    /** Lead-acid cells in series. */
    static int cells(StartingBattery battery) {
        return (int) Math.round(nominal(battery).si() / LEAD_ACID_CELL_V);
    }

    /** The cranking rating of the bank: ratings of strings in parallel add, those of blocks in series do not. */
    static Current crankingRating(StartingBattery battery) {
        return Current.of(strings(battery) * battery.getBlockCrankingRating().si());
    }

    /** The rated charge of the bank: that of strings in parallel adds, that of blocks in series does not. */
    static Charge capacity(StartingBattery battery) {
        return Charge.of(strings(battery) * battery.getBlockCapacity().si());
    }

    /** How many blocks there are. */
    static int blocks(StartingBattery battery) {
        return inSeries(battery) * strings(battery);
    }

    private static int inSeries(StartingBattery battery) {
        return Argument.atLeastOne("blocks in series", battery.getBlocksInSeries());
    }

    private static int strings(StartingBattery battery) {
        return Argument.atLeastOne("strings in parallel", battery.getStringsInParallel());
    }

    /** The curve of rested voltage over charge; only for lead-acid. */
    static OpenCircuitCurve curve(BatteryChemistry chemistry) {
        return switch (chemistry) {
            case FLOODED_LEAD_ACID -> OpenCircuitCurve.FLOODED_US_ARMY;
            case AGM -> OpenCircuitCurve.AGM;
            case GEL -> OpenCircuitCurve.GEL;
            case LITHIUM_IRON_PHOSPHATE, NOT_ENTERED -> throw new IllegalArgumentException("no lead-acid curve for " + chemistry);
        };
    }

    /** The battery in words, such as "flooded lead-acid". */
    static String kind(StartingBattery battery) {
        return switch (battery.getChemistry()) {
            case FLOODED_LEAD_ACID -> "flooded lead-acid";
            case AGM -> "AGM";
            case GEL -> "gel";
            case LITHIUM_IRON_PHOSPHATE -> "lithium iron phosphate";
            case NOT_ENTERED -> "unknown";
        };
    }
}
