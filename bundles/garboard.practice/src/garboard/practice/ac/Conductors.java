// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.Optional;

import garboard.checks.Comparison;
import garboard.checks.Limit;
import garboard.physics.cable.ConductorSeries;
import garboard.physics.cable.ConductorSize;
import garboard.practice.cable.CableRuns;
import garboard.quantity.Area;

/** Conductor sizes of grounding conductors, which stand in the record as a person wrote them. */
final class Conductors {

    private Conductors() {
    }

    /** Compares a size as it is written with the least one; a text that is no size cannot be held against it. */
    static Comparison atLeast(String what, String written, Least least) {
        return CableRuns.size(written)
            .map(size -> Comparison.atLeast(what + " is " + size + "; the least is " + least.size(), size.area(),
                Limit.of(least.size().area(), least.origin())))
            .orElseGet(() -> Comparison.undecided("\"" + written + "\" is no conductor size; write it as 10 AWG or 6 mm2"));
    }

    /**
     * The smallest size that is allowed.
     *
     * @param origin whose figure it is
     */
    record Least(ConductorSize size, String origin) {
    }

    /** The smallest size of the same kind, metric or American, that has an area; nothing where none is large enough. */
    static Optional<ConductorSize> next(String written, Area least) {
        return CableRuns.size(written).map(CableRuns::series).flatMap(series -> ConductorSeries.smallest(series, least));
    }
}
