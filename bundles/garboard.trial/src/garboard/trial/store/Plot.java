// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

/**
 * Points to draw in the order of time: of each column of the plot the first and the last reading, the lowest and the highest, so that a
 * line through them looks as one through all readings would.
 *
 * @param timesNs  times in ns
 * @param values   values in the SI unit
 * @param readings how many readings they stand for
 */
public record Plot(long[] timesNs, double[] values, long readings) {

    /** {@return how many points there are, at most four for each column} */
    public int size() {
        return timesNs.length;
    }
}
