// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.io.IOException;
import java.util.Optional;

import garboard.trial.store.ReadingStore;
import garboard.trial.store.ReadingVisitor;

/**
 * A channel within a window, in the SI unit.
 *
 * @param count     of readings
 * @param mean      of them
 * @param deviation standard deviation of one; 0 for a single reading
 * @param lowest    of them
 * @param highest   of them
 */
public record WindowStatistics(long count, double mean, double deviation, double lowest, double highest) {

    /** {@return what a channel does from a time on and before another; nothing where it is silent} */
    public static Optional<WindowStatistics> of(ReadingStore store, int channel, long fromNs, long toNs) throws IOException {
        Running running = new Running();
        store.read(channel, fromNs, toNs, running);
        return running.count == 0 ? Optional.empty() : Optional.of(running.statistics());
    }

    /** Welford's way, which does not lose digits where the mean is large beside the deviation. */
    private static final class Running implements ReadingVisitor {

        private long count;
        private double mean;
        private double squares;
        private double lowest = Double.POSITIVE_INFINITY;
        private double highest = Double.NEGATIVE_INFINITY;

        @Override
        public void reading(long timeNs, double si) {
            count++;
            double off = si - mean;
            mean += off / count;
            squares += off * (si - mean);
            lowest = Math.min(lowest, si);
            highest = Math.max(highest, si);
        }

        WindowStatistics statistics() {
            return new WindowStatistics(count, mean, count > 1 ? Math.sqrt(squares / (count - 1)) : 0, lowest, highest);
        }
    }
}
