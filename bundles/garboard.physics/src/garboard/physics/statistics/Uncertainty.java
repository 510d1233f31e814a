// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Frequency;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;

/**
 * Standard uncertainty of a result ({@link MeasurementSources#UNCERTAINTY}). The quantity is the kind of differences: of temperatures a
 * temperature difference.
 *
 * @param standard one standard uncertainty, 0 or more
 */
public record Uncertainty<D extends Quantity<D>>(D standard) {

    private static final double COVERAGE = 2;

    public Uncertainty {
        Argument.notNegative("standard uncertainty", standard);
    }

    /** Type B, of an instrument whose reading may lie anywhere within a half width: half width / sqrt(3). */
    public static <D extends Quantity<D>> Uncertainty<D> ofHalfWidth(D halfWidth) {
        return new Uncertainty<>(halfWidth.kind().of(Argument.notNegative("half width", halfWidth) / Math.sqrt(3)));
    }

    /** Adds the type A part of a mean of readings: s / sqrt(n). */
    public Uncertainty<D> withScatter(D standardDeviation, int readings) {
        if (readings < 2) {
            throw OutOfRangeException.of("readings", readings, "2 or more, as one reading has no scatter");
        }
        return and(new Uncertainty<>(kindOf(Argument.notNegative("standard deviation", standardDeviation) / Math.sqrt(readings))));
    }

    /** Adds an independent part: root of the sum of squares. */
    public Uncertainty<D> and(Uncertainty<D> other) {
        return new Uncertainty<>(kindOf(Math.hypot(standard.si(), other.standard.si())));
    }

    /** Expanded uncertainty for k = 2, about 95 %. */
    public D expanded() {
        return kindOf(COVERAGE * standard.si());
    }

    /** Of a droop f0/f1 - 1 from two independent readings. */
    public static Uncertainty<Ratio> ofDroop(FrequencyReading noLoad, FrequencyReading loaded) {
        double f1 = loaded.value().si();
        return new Uncertainty<>(Ratio.of(Math.hypot(noLoad.uncertainty().standard().si() / f1,
                noLoad.value().si() * loaded.uncertainty().standard().si() / (f1 * f1))));
    }

    private D kindOf(double si) {
        return standard.kind().of(si);
    }

    /** A frequency and how sure it is. */
    public record FrequencyReading(Frequency value, Uncertainty<Frequency> uncertainty) {

        public FrequencyReading {
            Argument.positive("frequency", value);
        }
    }
}
