// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

import garboard.physics.Argument;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Area;

/** The sizes that are sold, thinnest first. */
public final class ConductorSeries {

    /** American gauges of 33 CFR 183.425 Table 5: 18 AWG to 4/0 AWG. */
    public static final List<ConductorSize> AWG = IntStream.of(18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3)
            .mapToObj(ConductorSize::awg).toList();
    /** Sizes of IEC 60228: 0.5 mm2 to 630 mm2. */
    public static final List<ConductorSize> IEC = DoubleStream.of(ReferenceTable.load("conductor-resistance-iec60228.csv").figures("mm2"))
            .mapToObj(ConductorSize::squareMillimetre).toList();

    /** Ratios of gauges are exact powers, so that two ways to the same gauge differ in the last bits only. */
    private static final double ROUNDING = 1e-9;

    private ConductorSeries() {
    }

    /** Smallest size of a series that has at least an area; nothing where the largest falls short. */
    public static Optional<ConductorSize> smallest(List<ConductorSize> series, Area atLeast) {
        double areaM2 = Argument.positive("area", atLeast) * (1 - ROUNDING);
        return series.stream().filter(size -> size.area().si() >= areaM2).findFirst();
    }

    /** Largest size of a series that has at most an area; nothing where the smallest is larger. Finds the row of a table that knows other sizes. */
    public static Optional<ConductorSize> largest(List<ConductorSize> series, Area atMost) {
        double areaM2 = Argument.positive("area", atMost) * (1 + ROUNDING);
        return series.stream().filter(size -> size.area().si() <= areaM2).reduce((smaller, larger) -> larger);
    }
}
