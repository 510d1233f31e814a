// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import garboard.trial.store.ReadingStore;
import garboard.trial.store.TimeRange;

/**
 * The load over time, thinned out to means of a second or more, in the order of time: what steps are found in.
 *
 * @param timesNs    the middle of each interval; intervals without a reading are not there
 * @param values     mean load in it, in the SI unit
 * @param intervalNs length of an interval
 */
public record LoadSignal(long[] timesNs, double[] values, long intervalNs) {

    /** Steps of a load last minutes; what happens within a second is not looked for here. */
    private static final long LEAST_INTERVAL_NS = 1_000_000_000L;
    /** Eight hours at one and a half seconds. Finding steps takes time with the square of this. */
    private static final int MOST = 20_000;

    public LoadSignal {
        if (timesNs.length != values.length || intervalNs <= 0) {
            throw new IllegalArgumentException(timesNs.length + " times, " + values.length + " values, every " + intervalNs + " ns");
        }
    }

    /**
     * {@return the sum of some channels of a store} One channel for the total load, or one for each line; where one of them is silent for an
     * interval there is no sum.
     *
     * @param channels numbers of channels of the same kind
     */
    public static LoadSignal of(ReadingStore store, List<Integer> channels) throws IOException {
        Optional<TimeRange> range = store.range();
        if (channels.isEmpty() || range.isEmpty()) {
            return new LoadSignal(new long[0], new double[0], LEAST_INTERVAL_NS);
        }
        long firstNs = range.get().firstNs();
        long interval = interval(store, channels, range.get());
        int count = (int) ((range.get().lastNs() - firstNs) / interval) + 1;
        double[] sum = new double[count];
        boolean[] complete = new boolean[count];
        Arrays.fill(complete, true);
        for (int channel : channels) {
            double[] total = new double[count];
            int[] readings = new int[count];
            store.read(channel, (timeNs, si) -> {
                int at = (int) ((timeNs - firstNs) / interval);
                total[at] += si;
                readings[at]++;
            });
            for (int i = 0; i < count; i++) {
                complete[i] &= readings[i] > 0;
                sum[i] += readings[i] > 0 ? total[i] / readings[i] : 0;
            }
        }
        return compact(sum, complete, firstNs, interval);
    }

    private static LoadSignal compact(double[] sum, boolean[] complete, long firstNs, long interval) {
        long[] times = new long[sum.length];
        double[] values = new double[sum.length];
        int size = 0;
        for (int i = 0; i < sum.length; i++) {
            if (complete[i]) {
                times[size] = firstNs + i * interval + interval / 2;
                values[size++] = sum[i];
            }
        }
        return new LoadSignal(Arrays.copyOf(times, size), Arrays.copyOf(values, size), interval);
    }

    /** As long as the readings of the slowest channel are apart on average, and so that there are not too many. */
    private static long interval(ReadingStore store, List<Integer> channels, TimeRange range) throws IOException {
        double span = range.lastNs() - range.firstNs();
        double longest = LEAST_INTERVAL_NS;
        for (int channel : channels) {
            long[] seen = {0, Long.MAX_VALUE, Long.MIN_VALUE}; // how many, first, last
            store.read(channel, (timeNs, si) -> {
                seen[0]++;
                seen[1] = Math.min(seen[1], timeNs);
                seen[2] = Math.max(seen[2], timeNs);
            });
            if (seen[0] > 1) {
                longest = Math.max(longest, (double) (seen[2] - seen[1]) / (seen[0] - 1));
            }
        }
        return (long) Math.ceil(Math.max(longest, span / (MOST - 1)));
    }

    /** {@return how many intervals have a load} */
    public int size() {
        return timesNs.length;
    }
}
