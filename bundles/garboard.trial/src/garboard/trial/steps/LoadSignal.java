// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import garboard.trial.store.ReadingStore;
import garboard.trial.store.ReadingVisitor;

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
        long interval = LEAST_INTERVAL_NS;
        for (int channel : channels) {
            interval = Math.max(interval, Spacing.usual(store, channel));
        }
        Intervals intervals = new Intervals(channels.size(), interval);
        for (int i = 0; i < channels.size(); i++) {
            int line = i;
            store.read(channels.get(i), (timeNs, si) -> intervals.add(line, timeNs, si));
        }
        return intervals.signal();
    }

    /** How far the readings of a channel are apart for the most part. A mean would be led astray by a pause, or a clock that was set. */
    private static final class Spacing implements ReadingVisitor {

        private static final int LOOKED_AT = 20_000;

        private final long[] apart = new long[LOOKED_AT];
        private int count;
        private long lastNs = Long.MAX_VALUE;

        static long usual(ReadingStore store, int channel) throws IOException {
            Spacing spacing = new Spacing();
            store.read(channel, spacing);
            Arrays.sort(spacing.apart, 0, spacing.count);
            return spacing.count == 0 ? 0 : spacing.apart[spacing.count / 2];
        }

        @Override
        public void reading(long timeNs, double si) {
            if (timeNs > lastNs && count < LOOKED_AT) {
                apart[count++] = timeNs - lastNs;
            }
            lastNs = timeNs;
        }
    }

    /** Sums by interval; only those with readings take room, and when they are too many, two become one. */
    private static final class Intervals {

        private final int lines;
        private Map<Long, double[]> sums = new HashMap<>();
        private long intervalNs;
        private long beginNs;

        Intervals(int lines, long intervalNs) {
            this.lines = lines;
            this.intervalNs = intervalNs;
        }

        void add(int line, long timeNs, double si) {
            if (sums.isEmpty()) {
                beginNs = timeNs - intervalNs / 2; // so that regular readings come to lie in the middle
            }
            double[] sum = sums.computeIfAbsent(Math.floorDiv(timeNs - beginNs, intervalNs), at -> new double[2 * lines]);
            sum[2 * line] += si;
            sum[2 * line + 1]++;
            if (sums.size() > MOST) {
                halve();
            }
        }

        private void halve() {
            Map<Long, double[]> wider = new HashMap<>();
            sums.forEach((at, sum) -> wider.merge(Math.floorDiv(at, 2), sum, (one, other) -> {
                Arrays.setAll(one, i -> one[i] + other[i]);
                return one;
            }));
            sums = wider;
            intervalNs *= 2;
        }

        LoadSignal signal() {
            long[] places = sums.entrySet().stream().filter(entry -> isComplete(entry.getValue())).mapToLong(Map.Entry::getKey).sorted().toArray();
            return new LoadSignal(Arrays.stream(places).map(at -> beginNs + at * intervalNs + intervalNs / 2).toArray(),
                Arrays.stream(places).mapToDouble(at -> total(sums.get(at))).toArray(), intervalNs);
        }

        private boolean isComplete(double[] sum) {
            return IntStream.range(0, lines).allMatch(line -> sum[2 * line + 1] > 0);
        }

        private double total(double[] sum) {
            return IntStream.range(0, lines).mapToDouble(line -> sum[2 * line] / sum[2 * line + 1]).sum();
        }
    }

    /** {@return how many intervals have a load} */
    public int size() {
        return timesNs.length;
    }

    /** {@return the parts between pauses longer than this} */
    List<LoadSignal> partsBetween(long pauseNs) {
        List<LoadSignal> parts = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= size(); i++) {
            if (i == size() || timesNs[i] - timesNs[i - 1] > pauseNs) {
                parts.add(new LoadSignal(Arrays.copyOfRange(timesNs, from, i), Arrays.copyOfRange(values, from, i), intervalNs));
                from = i;
            }
        }
        return parts;
    }
}
