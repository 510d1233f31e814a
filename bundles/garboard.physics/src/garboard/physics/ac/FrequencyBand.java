// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Frequency;
import garboard.quantity.Ratio;

/** Steady-state frequency band: how far the frequency wanders at constant load. */
public final class FrequencyBand {

    private FrequencyBand() {
    }

    /** (f max - f min) / f rated, the full width ({@link AcSources#FREQUENCY_BAND}). Readings of 30 s or more at constant load, two at least. */
    public static Ratio width(List<Frequency> readings, Frequency rated) {
        if (readings.size() < 2) {
            throw OutOfRangeException.of("readings", readings.size(), "2 or more");
        }
        double highest = readings.stream().mapToDouble(f -> Argument.positive("frequency", f)).max().orElseThrow();
        double lowest = readings.stream().mapToDouble(Frequency::si).min().orElseThrow();
        return Ratio.of((highest - lowest) / Argument.positive("rated frequency", rated));
    }
}
