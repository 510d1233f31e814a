// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.hipparchus.stat.regression.SimpleRegression;

import garboard.physics.Argument;
import garboard.physics.statistics.Trace;
import garboard.quantity.Frequency;
import garboard.quantity.Ratio;

/**
 * Tells what an unsteady frequency does at constant load ({@link AcSources#HUNTING}). The trace is freed of its mean, and of its straight trend
 * where that spans more than half the permitted band (a swing of whole periods has a small slope of its own, which is no drift); then
 * <ul>
 * <li>wider than the band, crossing its mean 6 times or more with 80 % of the half periods within 30 % of their mean: hunting;</li>
 * <li>wider than the band without that rhythm: unsteady, as by a misfire;</li>
 * <li>within the band but with a trend that spans more than half of it: drift;</li>
 * <li>else steady.</li>
 * </ul>
 *
 * @param band permitted width as a share of the rated frequency, more than 0
 */
public record Hunting(Ratio band, Frequency rated) {

    private static final int LEAST_CROSSINGS = 6;
    private static final double LEAST_SHARE_IN_RHYTHM = 0.80;
    private static final double RHYTHM_TOLERANCE = 0.30;

    public Hunting {
        Argument.positive("permitted band", band);
        Argument.positive("rated frequency", rated);
    }

    /** What the frequency does. */
    public enum Behaviour {
        STEADY, DRIFT, HUNTING, UNSTEADY
    }

    /**
     * What was seen.
     *
     * @param behaviour the verdict
     * @param width peak to peak, without a drift, as a share of the rated frequency
     * @param crossings of the mean
     * @param rhythm crossings / (2 duration)
     * @param trend change of the trend over the trace, as a signed share of the rated frequency
     */
    public record Finding(Behaviour behaviour, Ratio width, int crossings, Frequency rhythm, Ratio trend) {
    }

    /** Judges a trace; 30 s of it or more are usual, at ten samples a second or more. */
    public Finding judge(Trace<Frequency> trace) {
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < trace.size(); i++) {
            line.addData(trace.timeS(i), trace.valueSi(i));
        }
        double trend = line.getSlope() * trace.duration().si() / rated.si();
        double mean = IntStream.range(0, trace.size()).mapToDouble(trace::valueSi).average().orElseThrow();
        double[] swing = new double[trace.size()];
        double highest = Double.NEGATIVE_INFINITY;
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < swing.length; i++) {
            swing[i] = trace.valueSi(i) - (drifts(trend) ? line.predict(trace.timeS(i)) : mean);
            highest = Math.max(highest, swing[i]);
            lowest = Math.min(lowest, swing[i]);
        }
        List<Double> crossings = crossings(trace, swing);
        double width = (highest - lowest) / rated.si();
        return new Finding(behaviour(width, trend, crossings), Ratio.of(width), crossings.size(),
                Frequency.of(crossings.size() / (2 * trace.duration().si())), Ratio.of(trend));
    }

    private Behaviour behaviour(double width, double trend, List<Double> crossings) {
        if (width > band.si()) {
            return crossings.size() >= LEAST_CROSSINGS && rhythmic(crossings) ? Behaviour.HUNTING : Behaviour.UNSTEADY;
        }
        return drifts(trend) ? Behaviour.DRIFT : Behaviour.STEADY;
    }

    private boolean drifts(double trend) {
        return Math.abs(trend) > band.si() / 2;
    }

    private static List<Double> crossings(Trace<Frequency> trace, double[] swing) {
        List<Double> times = new ArrayList<>();
        int last = -1; // last sample that is clearly on one side
        for (int i = 0; i < swing.length; i++) {
            if (swing[i] == 0) {
                continue;
            }
            if (last >= 0 && swing[last] * swing[i] < 0) {
                double share = swing[last] / (swing[last] - swing[i]);
                times.add(trace.timeS(last) + share * (trace.timeS(i) - trace.timeS(last)));
            }
            last = i;
        }
        return times;
    }

    private static boolean rhythmic(List<Double> crossings) {
        int halves = crossings.size() - 1;
        double mean = (crossings.get(halves) - crossings.get(0)) / halves;
        long regular = 0;
        for (int i = 0; i < halves; i++) {
            if (Math.abs(crossings.get(i + 1) - crossings.get(i) - mean) <= RHYTHM_TOLERANCE * mean) {
                regular++;
            }
        }
        return regular >= LEAST_SHARE_IN_RHYTHM * halves;
    }
}
