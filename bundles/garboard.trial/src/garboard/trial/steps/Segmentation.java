// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Parts a signal into pieces of constant level so that the sum of squares about the levels, plus a price for each piece, is least. Exact, by
 * dynamic programming with pruning (Killick, Fearnhead, Eckley: Optimal detection of changepoints with a linear computational cost, Journal
 * of the American Statistical Association 107, 2012; FROM MEMORY).
 */
final class Segmentation {

    private final double[] sums;
    private final double[] squares;
    private final int least;
    private final double price;

    /**
     * @param least readings in a piece
     * @param price of a piece, in the square of the signal's unit
     */
    Segmentation(double[] signal, int least, double price) {
        this.least = least;
        this.price = price;
        sums = new double[signal.length + 1];
        squares = new double[signal.length + 1];
        double offset = signal.length == 0 ? 0 : signal[0]; // so that squares of large levels do not hide small steps
        for (int i = 0; i < signal.length; i++) {
            double x = signal[i] - offset;
            sums[i + 1] = sums[i] + x;
            squares[i + 1] = squares[i] + x * x;
        }
    }

    /** Sum of squares about the mean of a piece. */
    private double cost(int from, int to) {
        double sum = sums[to] - sums[from];
        return Math.max(0, squares[to] - squares[from] - sum * sum / (to - from));
    }

    /** {@return where pieces begin, and the end, so that there is one more of them than pieces; the end alone for too short a signal} */
    int[] boundaries() {
        int n = sums.length - 1;
        if (n < least) {
            return new int[] {n};
        }
        double[] best = new double[n + 1];
        int[] previous = new int[n + 1];
        List<Integer> candidates = new ArrayList<>(List.of(0));
        best[0] = -price;
        for (int to = least; to <= n; to++) {
            best[to] = Double.POSITIVE_INFINITY;
            for (int from : candidates) {
                double total = best[from] + cost(from, to) + price;
                if (total < best[to]) {
                    best[to] = total;
                    previous[to] = from;
                }
            }
            int next = to + 1 - least; // a piece from here to the next end will be long enough
            if (next >= least) {
                // Whoever does worse up to there than what would begin there will never do better.
                candidates.removeIf(from -> best[from] + cost(from, next) > best[next]);
                candidates.add(next);
            }
        }
        Deque<Integer> found = new ArrayDeque<>(List.of(n));
        for (int at = n; at > 0; at = previous[at]) {
            found.addFirst(previous[at]);
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }
}
