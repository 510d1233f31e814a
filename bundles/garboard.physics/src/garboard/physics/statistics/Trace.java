// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import java.util.List;
import java.util.stream.IntStream;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Quantity;
import garboard.quantity.TimeSpan;

/**
 * A quantity over time, straight lines between the samples.
 *
 * @param samples two or more, each later than the one before
 */
public record Trace<Q extends Quantity<Q>>(List<Sample<Q>> samples) {

    public Trace {
        samples = List.copyOf(samples);
        if (samples.size() < 2) {
            throw OutOfRangeException.of("samples of the trace", samples.size(), "2 or more");
        }
        for (int i = 1; i < samples.size(); i++) {
            if (!samples.get(i - 1).at().isLessThan(samples.get(i).at())) {
                throw OutOfRangeException.of("time of a sample", samples.get(i).at(), "later than " + samples.get(i - 1).at());
            }
        }
    }

    /** Samples at a fixed interval, the first at time 0. */
    public static <Q extends Quantity<Q>> Trace<Q> every(TimeSpan interval, List<Q> values) {
        return new Trace<>(IntStream.range(0, values.size()).mapToObj(i -> new Sample<>(TimeSpan.of(i * interval.si()), values.get(i))).toList());
    }

    /** From the first sample to the last. */
    public TimeSpan duration() {
        return TimeSpan.of(samples.get(samples.size() - 1).at().si() - samples.get(0).at().si());
    }

    /** Time of a sample in seconds, counted from 0. */
    public double timeS(int sample) {
        return samples.get(sample).at().si();
    }

    /** Value of a sample in the SI unit. */
    public double valueSi(int sample) {
        return samples.get(sample).value().si();
    }

    public int size() {
        return samples.size();
    }

    /** One point of a trace. */
    public record Sample<Q extends Quantity<Q>>(TimeSpan at, Q value) {
    }
}
