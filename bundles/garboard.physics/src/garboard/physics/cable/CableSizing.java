// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Area;
import garboard.quantity.Length;
import garboard.quantity.ResistancePerLength;

/**
 * The remedy for too much voltage drop: the smallest conductor that keeps within it. A drop is one condition only; the permitted current is another.
 * Nothing is answered where even the largest size falls short: then the run has to become shorter.
 */
public final class CableSizing {

    private static final ReferenceTable SAE = ReferenceTable.load("conductor-awg-sae.csv");

    private CableSizing() {
    }

    /** Smallest size of IEC 60228 by its resistance at the temperature of the task. */
    public static Optional<ConductorSize> smallestIec(CableTask task, StrandClass make) {
        return smallest(ConductorSeries.IEC, task, size -> drop(task, ConductorResistance.iec60228(size, make)));
    }

    /** Smallest American gauge by the resistance of annealed copper at the temperature of the task. */
    public static Optional<ConductorSize> smallestAwg(CableTask task) {
        return smallest(ConductorSeries.AWG, task, size -> drop(task, ConductorResistance.annealedCopper(size)));
    }

    /** Smallest American gauge whose geometric area is at least the one asked for, as by the circular-mil method. */
    public static Optional<ConductorSize> smallestAwg(Area atLeast) {
        return ConductorSeries.smallest(ConductorSeries.AWG, atLeast);
    }

    /** Smallest gauge whose SAE area is at least the one asked for: SAE-gauge cable has 6 to 12 % less copper ({@link CableSources#SAE_GAUGE}). */
    public static Optional<ConductorSize> smallestSaeGauge(Area atLeast) {
        double circularMils = Argument.positive("area", atLeast) / ConductorSize.CIRCULAR_MIL_M2;
        return ConductorSeries.AWG.stream().filter(size -> saeListed(size) && saeCircularMils(size) >= circularMils).findFirst();
    }

    /** Area of an SAE-gauge conductor; throws for a gauge that is not listed (3 AWG, and beyond 18 to 4/0). */
    public static Area saeArea(ConductorSize gauge) {
        if (gauge.series() != ConductorSize.Series.AWG || !saeListed(gauge)) {
            throw OutOfRangeException.of("gauge", gauge, "18 AWG to 4/0 AWG without 3 AWG");
        }
        return Area.of(saeCircularMils(gauge) * ConductorSize.CIRCULAR_MIL_M2);
    }

    /** Longest loop that a conductor allows: allowed drop / (I R'). */
    public static Length longestLoop(CableTask task, ResistancePerLength at20) {
        return Length.of(task.allowedDrop().si() / (task.current().si() * ConductorResistance.atTemperature(at20, task.conductor()).si()));
    }

    private static boolean saeListed(ConductorSize gauge) {
        return SAE.rowOf("awg", gauge.label()).isPresent();
    }

    private static double saeCircularMils(ConductorSize gauge) {
        return SAE.rowOf("awg", gauge.label()).flatMap(row -> SAE.figure(row, "sae_cmil")).orElseThrow();
    }

    private static Optional<ConductorSize> smallest(List<ConductorSize> series, CableTask task, ToDoubleFunction<ConductorSize> dropV) {
        return series.stream().filter(size -> dropV.applyAsDouble(size) <= task.allowedDrop().si()).findFirst();
    }

    private static double drop(CableTask task, ResistancePerLength at20) {
        return VoltageDrop.roundTrip(task.current(), ConductorResistance.atTemperature(at20, task.conductor()), task.loop()).si();
    }
}
