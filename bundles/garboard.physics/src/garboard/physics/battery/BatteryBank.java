// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.quantity.Charge;
import garboard.quantity.Current;
import garboard.quantity.Energy;
import garboard.quantity.Voltage;

/**
 * Equal blocks in series and parallel ({@link BatterySources#BANK_RULES}). A bank of unequal blocks has no such sums and must not be built.
 *
 * @param block each of the blocks
 * @param inSeries blocks in one string
 * @param inParallel strings beside each other
 */
public record BatteryBank(BatteryBlock block, int inSeries, int inParallel) {

    public BatteryBank {
        Argument.atLeastOne("blocks in series", inSeries);
        Argument.atLeastOne("strings in parallel", inParallel);
    }

    /** A bank of a single block. */
    public static BatteryBank of(BatteryBlock block) {
        return new BatteryBank(block, 1, 1);
    }

    public BatteryBank withBlocksInSeries(int blocks) {
        return new BatteryBank(block, blocks, inParallel);
    }

    public BatteryBank withStringsInParallel(int strings) {
        return new BatteryBank(block, inSeries, strings);
    }

    public Voltage nominal() {
        return Voltage.of(inSeries * block.nominal().si());
    }

    public Charge capacity() {
        return Charge.of(inParallel * block.capacity().si());
    }

    public Current coldCranking() {
        return Current.of(inParallel * block.coldCranking().si());
    }

    /** Nominal voltage times rated charge. */
    public Energy energy() {
        return Energy.of(nominal().si() * capacity().si());
    }
}
