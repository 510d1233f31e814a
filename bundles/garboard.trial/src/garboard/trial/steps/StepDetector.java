// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import garboard.trial.store.TimeRange;

/**
 * Finds the steps of a trial in its load: pieces of constant level ({@link Segmentation}), those of like level joined, and of them those
 * that last. What comes and goes within the least dwell (the inrush of a motor, a kettle) is passed over.
 *
 * @param settings what counts as a step
 */
public record StepDetector(StepSettings settings) {

    private static final double NS_PER_S = 1e9;
    private static final int LONGEST_PAUSE_INTERVALS = 3;
    /** Standard deviation of a normal distribution over the median of its absolute deviations. */
    private static final double OF_MEDIAN = 1.4826;
    /** A noise so far below the smallest step makes no difference; without it a signal of few digits would have none. */
    private static final double LEAST_NOISE_SHARE = 0.1;
    /** Price of a piece in variances times the logarithm of the length; above 2, where chance alone would part a signal. */
    private static final double PRICE = 4;
    /** Two would do for a level, but not to tell one from a single odd reading. */
    private static final int LEAST_STEADY_READINGS = 3;
    /** A dwell of a minute may be two readings half a minute apart, less some nanoseconds. */
    private static final double ROUNDING = 1e-3;
    /** Of the readings in a steady window so many may stray from the band. */
    private static final double STRAY_SHARE = 0.02;

    /** Readings from one on to before another, and their middle. */
    private record Piece(int from, int to, double level) {

        static Piece of(double[] values, int from, int to) {
            double[] sorted = Arrays.copyOfRange(values, from, to);
            return new Piece(from, to, median(sorted));
        }
    }

    /** {@return the steps in the order of time} None goes over a pause longer than the least dwell, whose load nobody knows. */
    public List<StepProposal> detect(LoadSignal signal) {
        double highest = Arrays.stream(withoutSingleStrays(signal.values())).map(Math::abs).max().orElse(0);
        long pauseNs = (long) Math.max(settings.leastDwell().si() * NS_PER_S, LONGEST_PAUSE_INTERVALS * signal.intervalNs());
        return signal.partsBetween(pauseNs).stream().flatMap(part -> detect(part, highest).stream()).toList();
    }

    private List<StepProposal> detect(LoadSignal signal, double highest) {
        double[] smooth = withoutSingleStrays(signal.values());
        if (smooth.length < 2) {
            return List.of();
        }
        double leastStep = settings.leastStep().si() * highest;
        double noise = Math.max(noise(smooth), LEAST_NOISE_SHARE * leastStep);
        int[] boundaries = new Segmentation(smooth, 2, PRICE * noise * noise * Math.log(smooth.length)).boundaries();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i < boundaries.length; i++) {
            pieces.add(Piece.of(smooth, boundaries[i - 1], boundaries[i]));
        }
        join(pieces, smooth, leastStep);
        double leastS = (1 - ROUNDING) * settings.leastDwell().si();
        List<Piece> lasting = new ArrayList<>(pieces.stream().filter(piece -> durationS(signal, piece) >= leastS).toList());
        joinOverGaps(lasting, signal, smooth, leastStep);
        giveTransitionsToWhatFollows(lasting, signal);
        return lasting.stream().map(piece -> proposal(signal, piece, highest)).toList();
    }

    /** The middle of each three: it takes away single odd readings and leaves steps where they are. */
    private static double[] withoutSingleStrays(double[] values) {
        double[] smooth = values.clone();
        for (int i = 1; i < values.length - 1; i++) {
            smooth[i] = Math.max(Math.min(values[i - 1], values[i]), Math.min(Math.max(values[i - 1], values[i]), values[i + 1]));
        }
        return smooth;
    }

    /** From the differences of neighbours, of which few are steps. */
    private static double noise(double[] values) {
        double[] differences = new double[values.length - 1];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = Math.abs(values[i + 1] - values[i]);
        }
        return OF_MEDIAN * median(differences) / Math.sqrt(2);
    }

    /** Sorts the array. */
    private static double median(double[] values) {
        Arrays.sort(values);
        int middle = values.length / 2;
        return values.length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }

    /** Joins neighbours, the most alike first, until all differ by a step. */
    private static void join(List<Piece> pieces, double[] values, double leastStep) {
        while (pieces.size() > 1) {
            int closest = 1;
            for (int i = 2; i < pieces.size(); i++) {
                if (difference(pieces, i) < difference(pieces, closest)) {
                    closest = i;
                }
            }
            if (difference(pieces, closest) >= leastStep) {
                return;
            }
            pieces.set(closest - 1, Piece.of(values, pieces.get(closest - 1).from, pieces.get(closest).to));
            pieces.remove(closest);
        }
    }

    private static double difference(List<Piece> pieces, int second) {
        return Math.abs(pieces.get(second).level - pieces.get(second - 1).level);
    }

    /** Joins what only a short interruption parts. */
    private void joinOverGaps(List<Piece> pieces, LoadSignal signal, double[] values, double leastStep) {
        for (int i = pieces.size() - 1; i > 0; i--) {
            Piece before = pieces.get(i - 1);
            Piece after = pieces.get(i);
            double gapS = (signal.timesNs()[after.from] - signal.timesNs()[before.to - 1]) / NS_PER_S;
            if (difference(pieces, i) < leastStep && gapS < settings.leastDwell().si() + signal.intervalNs() / NS_PER_S) {
                pieces.set(i - 1, Piece.of(values, before.from, after.to));
                pieces.remove(i);
            }
        }
    }

    /** The load has changed when it begins to change; until when it has settled is for the steady window to tell. */
    private void giveTransitionsToWhatFollows(List<Piece> pieces, LoadSignal signal) {
        for (int i = 1; i < pieces.size(); i++) {
            int end = pieces.get(i - 1).to;
            Piece piece = pieces.get(i);
            if ((beginNs(signal, piece.from) - endNs(signal, end)) / NS_PER_S < settings.leastDwell().si()) {
                pieces.set(i, new Piece(end, piece.to, piece.level));
            }
        }
    }

    private static double durationS(LoadSignal signal, Piece piece) {
        return (endNs(signal, piece.to) - beginNs(signal, piece.from)) / NS_PER_S;
    }

    private static long beginNs(LoadSignal signal, int reading) {
        return signal.timesNs()[reading] - signal.intervalNs() / 2;
    }

    private static long endNs(LoadSignal signal, int behind) {
        return beginNs(signal, behind - 1) + signal.intervalNs();
    }

    private StepProposal proposal(LoadSignal signal, Piece piece, double highest) {
        double band = Math.max(settings.band().si() * highest, Double.MIN_NORMAL);
        int to = piece.to;
        while (to > piece.from && isStray(signal, to - 1, piece, band)) {
            to--;
        }
        int from = steadyFrom(signal, piece, to, band);
        boolean enough = to - from >= LEAST_STEADY_READINGS && (endNs(signal, to) - beginNs(signal, from)) / NS_PER_S >= settings.leastWindow().si();
        Optional<TimeRange> steady = enough ? Optional.of(new TimeRange(beginNs(signal, from), endNs(signal, to))) : Optional.empty();
        return new StepProposal(beginNs(signal, piece.from), endNs(signal, piece.to), piece.level, steady, enough ? "" : remark(signal, piece));
    }

    /** The earliest reading from which on few stray from the band. */
    private static int steadyFrom(LoadSignal signal, Piece piece, int to, double band) {
        int from = to;
        int stray = 0;
        for (int i = to - 1; i >= piece.from; i--) {
            boolean strays = isStray(signal, i, piece, band);
            stray += strays ? 1 : 0;
            if (!strays && stray <= STRAY_SHARE * (to - i)) {
                from = i;
            }
        }
        return from;
    }

    private static boolean isStray(LoadSignal signal, int reading, Piece piece, double band) {
        return Math.abs(signal.values()[reading] - piece.level) > band;
    }

    private String remark(LoadSignal signal, Piece piece) {
        if (piece.to - piece.from < LEAST_STEADY_READINGS) {
            return "The load was read only " + (piece.to - piece.from) + " times.";
        }
        return "The load is not steady for " + settings.leastWindow() + ".";
    }
}
