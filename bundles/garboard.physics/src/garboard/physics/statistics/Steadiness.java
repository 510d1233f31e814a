// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import java.util.List;

import org.hipparchus.stat.regression.SimpleRegression;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Quantity;
import garboard.quantity.TimeSpan;

/** Whether readings have settled. */
public final class Steadiness {

    private static final int LEAST_READINGS = 3;
    private static final int ELECTRICAL_READINGS = 4;
    private static final double LONGEST_INTERVAL_S = 15 * 60;

    private Steadiness() {
    }

    /**
     * Change over the last window of a trace: least-squares slope times window ({@link MeasurementSources#THERMAL_STEADINESS}), of temperatures a
     * temperature difference. Throws where the window holds fewer than three readings or the trace is shorter than it.
     */
    public static <Q extends Quantity<Q>> Quantity<?> changeOverLast(TimeSpan window, Trace<Q> trace) {
        double windowS = Argument.between("window", window, 1e-9, trace.duration().si(), "at most the length of the trace, " + trace.duration());
        // The reading that opens the window belongs to it, whatever the last bit of a conversion says.
        double fromS = trace.timeS(trace.size() - 1) - windowS * (1 + 1e-9);
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < trace.size(); i++) {
            if (trace.timeS(i) >= fromS) {
                line.addData(trace.timeS(i), trace.valueSi(i));
            }
        }
        if (line.getN() < LEAST_READINGS) {
            throw OutOfRangeException.of("readings within the window", line.getN(), "3 or more");
        }
        Q last = trace.samples().get(trace.size() - 1).value();
        return last.kind().of(last.si() + line.getSlope() * windowS).differenceFrom(last);
    }

    /** Whether the size of {@link #changeOverLast} is at most a limit. */
    public static <Q extends Quantity<Q>> boolean within(Quantity<?> permittedChange, TimeSpan window, Trace<Q> trace) {
        Quantity<?> change = changeOverLast(window, trace);
        if (permittedChange.getClass() != change.getClass() || permittedChange.si() < 0) {
            throw OutOfRangeException.of("permitted change", permittedChange, "0 or more, a " + change.getClass().getSimpleName());
        }
        return Math.abs(change.si()) <= permittedChange.si() * (1 + 1e-9);
    }

    /**
     * Whether the last four readings show no continuing trend: they neither all rise nor all fall ({@link MeasurementSources#ELECTRICAL_STEADINESS}).
     * Throws for fewer readings, or where two of them are more than 15 min apart.
     */
    public static <Q extends Quantity<Q>> boolean withoutTrend(Trace<Q> trace) {
        if (trace.size() < ELECTRICAL_READINGS) {
            throw OutOfRangeException.of("readings", trace.size(), "4 or more");
        }
        List<Trace.Sample<Q>> last = trace.samples().subList(trace.size() - ELECTRICAL_READINGS, trace.size());
        int rises = 0;
        int falls = 0;
        for (int i = 1; i < last.size(); i++) {
            TimeSpan interval = TimeSpan.of(last.get(i).at().si() - last.get(i - 1).at().si());
            Argument.between("time between two readings", interval, 0, LONGEST_INTERVAL_S, "at most 15 min");
            rises += last.get(i).value().isMoreThan(last.get(i - 1).value()) ? 1 : 0;
            falls += last.get(i).value().isLessThan(last.get(i - 1).value()) ? 1 : 0;
        }
        return rises < last.size() - 1 && falls < last.size() - 1;
    }
}
