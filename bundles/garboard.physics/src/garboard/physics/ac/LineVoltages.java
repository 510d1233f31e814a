// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.stream.DoubleStream;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/**
 * The three line-to-line voltages, in any order.
 *
 * @param first more than 0; no longer than the other two together, as the three close a triangle
 */
public record LineVoltages(Voltage first, Voltage second, Voltage third) {

    public LineVoltages {
        double sum = Argument.positive("line voltage", first) + Argument.positive("line voltage", second) + Argument.positive("line voltage", third);
        double longest = DoubleStream.of(first.si(), second.si(), third.si()).max().orElseThrow();
        if (2 * longest > sum * (1 + 1e-12)) {
            throw OutOfRangeException.of("line voltages", first + ", " + second + ", " + third, "three sides of a triangle");
        }
    }

    /** Largest deviation from the average over the average ({@link AcSources#UNBALANCE_NEMA}). */
    public Ratio unbalanceNema() {
        double average = volts().average().orElseThrow();
        return Ratio.of(volts().map(v -> Math.abs(v - average)).max().orElseThrow() / average);
    }

    /**
     * Negative over positive sequence ({@link AcSources#UNBALANCE_IEC}): b = sum U^4 / (sum U^2)^2, factor sqrt((1 - r) / (1 + r)) with
     * r = sqrt(3 - 6 b).
     */
    public Ratio unbalanceIec() {
        double squares = volts().map(v -> v * v).sum();
        double b = volts().map(v -> v * v * v * v).sum() / (squares * squares);
        // Balanced voltages give r = 1 and a flat triangle r = 0; rounding may step past either.
        double r = Math.sqrt(Math.clamp(3 - 6 * b, 0, 1));
        return Ratio.of(Math.sqrt((1 - r) / (1 + r)));
    }

    private DoubleStream volts() {
        return DoubleStream.of(first.si(), second.si(), third.si());
    }
}
