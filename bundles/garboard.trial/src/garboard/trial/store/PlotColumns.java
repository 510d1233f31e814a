// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Gathers the readings of a channel into the columns of a plot. */
final class PlotColumns implements ReadingVisitor {

    /** First, lowest, highest, last. */
    private static final int POINTS = 4;
    private static final int LOWEST = 1;
    private static final int HIGHEST = 2;
    private static final int LAST = 3;

    private final long fromNs;
    private final double widthNs;
    private final long[] times;
    private final double[] values;
    private final boolean[] filled;
    private long readings;

    PlotColumns(long fromNs, long toNs, int columns) {
        if (columns < 1 || toNs <= fromNs) {
            throw new IllegalArgumentException(columns + " columns from " + fromNs + " to " + toNs + ", must be 1 or more, and some time");
        }
        this.fromNs = fromNs;
        widthNs = ((double) toNs - fromNs) / columns;
        times = new long[POINTS * columns];
        values = new double[POINTS * columns];
        filled = new boolean[columns];
    }

    @Override
    public void reading(long timeNs, double si) {
        readings++;
        int column = Math.min(filled.length - 1, (int) (((double) timeNs - fromNs) / widthNs));
        int at = POINTS * column;
        if (!filled[column]) {
            filled[column] = true;
            Arrays.fill(times, at, at + POINTS, timeNs);
            Arrays.fill(values, at, at + POINTS, si);
            return;
        }
        if (timeNs < times[at]) {
            put(at, timeNs, si);
        }
        if (si < values[at + LOWEST]) {
            put(at + LOWEST, timeNs, si);
        }
        if (si > values[at + HIGHEST]) {
            put(at + HIGHEST, timeNs, si);
        }
        if (timeNs >= times[at + LAST]) {
            put(at + LAST, timeNs, si);
        }
    }

    private void put(int at, long timeNs, double si) {
        times[at] = timeNs;
        values[at] = si;
    }

    /** {@return the points so far, each once} */
    Plot plot() {
        int[] points = IntStream.range(0, times.length).filter(i -> filled[i / POINTS] && isNew(i)).boxed()
            .sorted((one, other) -> Long.compare(times[one], times[other])).mapToInt(Integer::intValue).toArray();
        return new Plot(Arrays.stream(points).mapToLong(i -> times[i]).toArray(), Arrays.stream(points).mapToDouble(i -> values[i]).toArray(),
            readings);
    }

    /** {@return whether no earlier point of the column is the same} */
    private boolean isNew(int point) {
        int column = point - point % POINTS;
        return IntStream.range(column, point).noneMatch(i -> times[i] == times[point] && values[i] == values[point]);
    }
}
