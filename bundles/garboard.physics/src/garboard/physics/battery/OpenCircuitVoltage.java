// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import java.util.List;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * State of charge of a rested lead-acid battery by its open-circuit voltage, straight lines through the table of its kind
 * ({@link BatterySources#OPEN_CIRCUIT_TABLE}). Rested means: no load or charge for hours, or the surface charge taken off.
 */
public final class OpenCircuitVoltage {

    /** Below this a 12 V block has lost a cell. */
    private static final double LOWEST_BLOCK_V = 10.5;
    /** Above this it is being charged, not resting. */
    private static final double HIGHEST_BLOCK_V = 13.2;

    private OpenCircuitVoltage() {
    }

    /**
     * State of charge, 0 to 100 %. Valid for 10.5 to 13.2 V per 12 V block; throws outside, because then the battery is not at rest, has a dead cell,
     * or the number of blocks is wrong.
     */
    public static Ratio stateOfCharge(OpenCircuitCurve curve, Voltage rested, int blocksInSeries) {
        int blocks = Argument.atLeastOne("blocks in series", blocksInSeries);
        double blockV = Argument.between("rested voltage", rested, LOWEST_BLOCK_V * blocks, HIGHEST_BLOCK_V * blocks,
                "10.5 to 13.2 V for each 12 V block in series") / blocks;
        return Ratio.of(curve.stateOfCharge(blockV));
    }

    /** Rested voltage at a state of charge from 0 to 100 %: the inverse of {@link #stateOfCharge}. */
    public static Voltage restedVoltage(OpenCircuitCurve curve, Ratio stateOfCharge, int blocksInSeries) {
        double share = Argument.between("state of charge", stateOfCharge, 0, 1, "0 to 100 %");
        return Voltage.of(Argument.atLeastOne("blocks in series", blocksInSeries) * curve.blockVoltage(share));
    }

    /** Highest less lowest block of one series string; more than 0.1 V is common practice's sign of a weak block. */
    public static Voltage blockSpread(List<Voltage> blocks) {
        if (blocks.isEmpty()) {
            throw OutOfRangeException.of("blocks", 0, "1 or more");
        }
        var volts = blocks.stream().mapToDouble(Voltage::si).summaryStatistics();
        return Voltage.of(volts.getMax() - volts.getMin());
    }
}
