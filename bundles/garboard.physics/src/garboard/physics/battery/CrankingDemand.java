// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

/**
 * What the starter asks of each 12 V block in the string.
 *
 * @param cranking current while cranking
 * @param openCircuit rested voltage of the block, at most 13.2 V
 * @param floor least voltage at the posts, from 7.2 V up to less than the rested voltage
 */
public record CrankingDemand(Current cranking, Voltage openCircuit, Voltage floor) {

    /** Least voltage of a 12 V block while cranking, common practice. */
    private static final double USUAL_FLOOR_V = 9.6;

    public CrankingDemand {
        Argument.positive("cranking current", cranking);
        Argument.between("open-circuit voltage of a 12 V block", openCircuit, 7.2, 13.2, "at most 13.2 V");
        Argument.between("least voltage at the posts", floor, StarterBattery.TEST_END_V, 13.2, "7.2 V or more");
        if (floor.si() >= openCircuit.si()) {
            throw OutOfRangeException.of("least voltage at the posts", floor, "less than the open-circuit voltage of " + openCircuit);
        }
    }

    /** With common practice's floor of 9.6 V. */
    public static CrankingDemand of(Current cranking, Voltage openCircuit) {
        return new CrankingDemand(cranking, openCircuit, Voltage.of(USUAL_FLOOR_V));
    }

    public CrankingDemand withFloor(Voltage leastAtPosts) {
        return new CrankingDemand(cranking, openCircuit, leastAtPosts);
    }

    /** I (Voc - 7.2 V) / (Voc - Vmin): the cold-cranking current that each block needs ({@link BatterySources#COLD_CRANKING_LINE}). */
    public Current coldCrankingNeeded() {
        return Current.of(cranking.si() * (openCircuit.si() - StarterBattery.TEST_END_V) / (openCircuit.si() - floor.si()));
    }
}
