// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** Steady-state voltage over all loads from none to rated at rated power factor. */
public final class SteadyVoltage {

    private SteadyVoltage() {
    }

    /** (U max - U min) / (2 U rated): half the spread, the figure after the plus-minus sign ({@link AcSources#STEADY_VOLTAGE}). */
    public static Ratio deviation(List<Voltage> readings, Voltage rated) {
        double highest = some(readings).stream().mapToDouble(Voltage::si).max().orElseThrow();
        double lowest = readings.stream().mapToDouble(Voltage::si).min().orElseThrow();
        return Ratio.of((highest - lowest) / (2 * Argument.positive("rated voltage", rated)));
    }

    /** The reading farthest from rated, as a signed share of rated: a small spread around a wrong setting is wrong all the same. */
    public static Ratio farthest(List<Voltage> readings, Voltage rated) {
        double ratedV = Argument.positive("rated voltage", rated);
        return Ratio.of(some(readings).stream().map(reading -> (reading.si() - ratedV) / ratedV)
                .reduce(0.0, (far, next) -> Math.abs(next) > Math.abs(far) ? next : far));
    }

    private static List<Voltage> some(List<Voltage> readings) {
        if (readings.isEmpty()) {
            throw OutOfRangeException.of("readings", 0, "1 or more");
        }
        readings.forEach(reading -> Argument.positive("voltage", reading));
        return readings;
    }
}
