// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.List;
import java.util.function.ToDoubleFunction;

import garboard.physics.Argument;
import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

/** Spread over the phases of one machine ({@link AcSources#PHASE_BALANCE}). */
public final class PhaseBalance {

    private PhaseBalance() {
    }

    /** (U max - U min) / U average of the line-to-neutral voltages; at most 1 % at balanced load. */
    public static Ratio voltageSpread(List<Voltage> lineToNeutral) {
        double average = some(lineToNeutral).stream().mapToDouble(Voltage::si).average().orElseThrow();
        return Ratio.of((highest(lineToNeutral, Voltage::si) - lowest(lineToNeutral, Voltage::si)) / average);
    }

    /** (I max - I min) / I max: how unevenly the load lies on the phases. */
    public static Ratio currentImbalance(List<Current> phases) {
        double most = highest(some(phases), Current::si);
        return Ratio.of((most - lowest(phases, Current::si)) / most);
    }

    private static <Q extends Quantity<Q>> List<Q> some(List<Q> phases) {
        if (phases.size() < 2) {
            throw OutOfRangeException.of("phases", phases.size(), "2 or more");
        }
        phases.forEach(phase -> Argument.notNegative(phase.kind().name(), phase));
        phases.stream().filter(phase -> phase.si() > 0).findAny()
                .orElseThrow(() -> OutOfRangeException.of(phases.get(0).kind().name(), phases, "more than 0 on one phase at least"));
        return phases;
    }

    private static <Q> double highest(List<Q> phases, ToDoubleFunction<Q> si) {
        return phases.stream().mapToDouble(si).max().orElseThrow();
    }

    private static <Q> double lowest(List<Q> phases, ToDoubleFunction<Q> si) {
        return phases.stream().mapToDouble(si).min().orElseThrow();
    }
}
