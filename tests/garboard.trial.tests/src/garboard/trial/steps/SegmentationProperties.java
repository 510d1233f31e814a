// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Pruning must not change the answer: held against trying every way to part a short signal. */
class SegmentationProperties {

    private static double spread(double[] signal, int from, int to) {
        double mean = 0;
        for (int i = from; i < to; i++) {
            mean += signal[i] / (to - from);
        }
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += (signal[i] - mean) * (signal[i] - mean);
        }
        return sum;
    }

    /** The least price of parting what is left, by trying all. */
    private static double cheapest(double[] signal, int from, int least, double price) {
        if (from == signal.length) {
            return 0;
        }
        double best = Double.POSITIVE_INFINITY;
        for (int to = from + least; to <= signal.length; to++) {
            best = Math.min(best, price + spread(signal, from, to) + cheapest(signal, to, least, price));
        }
        return best;
    }

    @Property(tries = 300, seed = "21")
    void findsTheCheapestOfAllWays(@ForAll @Size(min = 3, max = 12) List<@IntRange(min = -50, max = 50) Integer> tenths,
        @ForAll @IntRange(min = 1, max = 3) int least, @ForAll @DoubleRange(min = 0.1, max = 20) double price) {
        double[] signal = tenths.stream().mapToDouble(tenth -> tenth / 10.0).toArray();
        int[] boundaries = new Segmentation(signal, least, price).boundaries();
        double total = 0;
        for (int i = 1; i < boundaries.length; i++) {
            assertThat(boundaries[i] - boundaries[i - 1]).isGreaterThanOrEqualTo(least);
            total += price + spread(signal, boundaries[i - 1], boundaries[i]);
        }
        assertThat(total).isCloseTo(cheapest(signal, 0, least, price), within(1e-9));
    }
}
