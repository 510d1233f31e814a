// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

/**
 * One 12 V block as a source for the starter: a straight line from its open-circuit voltage to the 7.2 V that the cold-cranking test
 * of SAE J537 ends with ({@link BatterySources#COLD_CRANKING_LINE}). Blocks in series carry the same current, so the line holds for each.
 *
 * @param openCircuit rested voltage of the block, more than 7.2 V and at most 13.2 V
 * @param coldCranking cold-cranking current by SAE J537 (30 s at -18 degC to 7.2 V); the figure of another standard is not the same thing
 */
public record StarterBattery(Voltage openCircuit, Current coldCranking) {

    /** Voltage of a 12 V block at the end of the SAE J537 test, 1.2 V per cell. */
    static final double TEST_END_V = 7.2;

    public StarterBattery {
        Argument.between("open-circuit voltage of a 12 V block", openCircuit, 7.2000001, 13.2, "more than 7.2 V and at most 13.2 V");
        Argument.positive("cold-cranking current", coldCranking);
    }

    /** (Voc - 7.2 V) / CCA. */
    public Resistance internalResistance() {
        return Resistance.of((openCircuit.si() - TEST_END_V) / coldCranking.si());
    }

    /**
     * Voltage at the posts of a string of such blocks while it cranks. Valid up to the cold-cranking current; throws above, where the line
     * would leave its end point.
     */
    public Voltage atPosts(Current cranking, int blocksInSeries) {
        double currentA = Argument.notNegative("cranking current", cranking);
        if (currentA > coldCranking.si()) {
            throw OutOfRangeException.of("cranking current", cranking, "at most the cold-cranking current of " + coldCranking);
        }
        return Voltage.of(Argument.atLeastOne("blocks in series", blocksInSeries) * (openCircuit.si() - currentA * internalResistance().si()));
    }
}
