// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.quantity.Frequency;
import garboard.quantity.Ratio;

/**
 * How far the frequency swings when load is taken on or thrown off ({@link AcSources#FREQUENCY_TRANSIENT}). Written as it is said:
 * {@code reached(f).belowRated(fr)}, {@code reached(f).from(initial).onRated(fr)}.
 *
 * @param reached the extreme frequency on the trace
 */
public record FrequencyTransient(Frequency reached) {

    public FrequencyTransient {
        Argument.positive("extreme frequency", reached);
    }

    public static FrequencyTransient reached(Frequency extreme) {
        return new FrequencyTransient(extreme);
    }

    /** Load taken on: (f extreme - f rated) / f rated, negative for a drop. */
    public Ratio againstRated(Frequency rated) {
        double ratedHz = Argument.positive("rated frequency", rated);
        return Ratio.of((reached.si() - ratedHz) / ratedHz);
    }

    /** Load thrown off: the rise counts from the frequency before it. */
    public Rise from(Frequency initial) {
        Argument.positive("initial frequency", initial);
        return new Rise(reached, initial);
    }

    /** A swing between two frequencies, waiting for the rated one. */
    public record Rise(Frequency reached, Frequency initial) {

        /** (f extreme - f initial) / f rated. */
        public Ratio onRated(Frequency rated) {
            return Ratio.of((reached.si() - initial.si()) / Argument.positive("rated frequency", rated));
        }
    }
}
