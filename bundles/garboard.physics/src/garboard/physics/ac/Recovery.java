// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

import garboard.physics.statistics.Trace;
import garboard.quantity.Quantity;
import garboard.quantity.TimeSpan;

/**
 * Recovery time on a trace: from leaving a steady band to entering a tolerance band for good ({@link AcSources#RECOVERY_TIME}). Entering it and
 * swinging out again does not count. Crossings between samples lie on the straight line between them.
 */
public final class Recovery<Q extends Quantity<Q>> {

    private final Band<Q> left;
    private final Band<Q> entered;

    private Recovery(Band<Q> left, Band<Q> entered) {
        this.left = left;
        this.entered = entered;
    }

    /** First step: the steady band before the change of load. */
    public static <Q extends Quantity<Q>> Leaving<Q> leaving(Band<Q> steady) {
        return new Leaving<>(steady);
    }

    /** The time; none at all (0 s) where the trace never leaves, nothing where it does not come back for good before its end. */
    public Optional<TimeSpan> on(Trace<Q> trace) {
        OptionalInt firstOutside = IntStream.range(0, trace.size()).filter(i -> !left.contains(trace.valueSi(i))).findFirst();
        OptionalInt lastOutside = IntStream.range(0, trace.size()).filter(i -> !entered.contains(trace.valueSi(i))).reduce((earlier, later) -> later);
        if (firstOutside.isEmpty() || lastOutside.isEmpty()) {
            return Optional.of(TimeSpan.of(0));
        }
        if (lastOutside.getAsInt() == trace.size() - 1) {
            return Optional.empty();
        }
        double leftS = crossing(trace, firstOutside.getAsInt() - 1, left.endTowards(trace.valueSi(firstOutside.getAsInt())));
        double enteredS = crossing(trace, lastOutside.getAsInt(), entered.endTowards(trace.valueSi(lastOutside.getAsInt())));
        return Optional.of(TimeSpan.of(Math.max(0, enteredS - leftS)));
    }

    /** Time at which the line from a sample to the next passes a value; that of the first sample where there is none before. */
    private static <Q extends Quantity<Q>> double crossing(Trace<Q> trace, int sample, double value) {
        if (sample < 0) {
            return trace.timeS(0);
        }
        double share = (value - trace.valueSi(sample)) / (trace.valueSi(sample + 1) - trace.valueSi(sample));
        return trace.timeS(sample) + share * (trace.timeS(sample + 1) - trace.timeS(sample));
    }

    /** Waits for the tolerance band, so that the two cannot be swapped unseen. */
    public record Leaving<Q extends Quantity<Q>>(Band<Q> steady) {

        public Recovery<Q> enteringForGood(Band<Q> tolerance) {
            return new Recovery<>(steady, tolerance);
        }
    }
}
