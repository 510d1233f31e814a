// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.physics.reference.Interpolation;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Current;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** Load test of a starting battery: half the cold-cranking current for 15 s ({@link BatterySources#LOAD_TEST}). */
public final class LoadTest {

    private static final Interpolation LEAST_V = ReferenceTable.load("battery-load-test.csv").interpolation("t_C", "least_V");

    private LoadTest() {
    }

    /** Half the cold-cranking current. */
    public static Current testCurrent(Current coldCranking) {
        return Current.of(Argument.positive("cold-cranking current", coldCranking) / 2);
    }

    /**
     * Least voltage at the end of the test, of blocks of 12 V in series; the same figures serve as the least voltage while cranking. Straight lines
     * from -18 to 21 degC; warmer batteries are held to the figure of 21 degC up to 50 degC; throws outside.
     */
    public static Voltage leastVoltage(Temperature battery, int blocksInSeries) {
        double celsius = Argument.between("battery temperature", battery, 255.15, 323.15, "-18 to 50 degC") - 273.15;
        return Voltage.of(Argument.atLeastOne("blocks in series", blocksInSeries) * LEAST_V.at(Math.min(celsius, LEAST_V.highest())));
    }
}
