// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__MEASURED_DROP;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.model.CableRun;
import garboard.practice.Figures;
import garboard.practice.Sources;

/** The voltage drop of an ordinary direct-current circuit as measured under its load. */
final class DropMeasured {

    private DropMeasured() {
    }

    static Check<CableRun> check() {
        return OrdinaryDrop.check("CABLE-DROP-MEASURED")
            .title("Circuit loses little voltage under its load")
            .basis(Sources.ABYC_E_11)
            .needs(CABLE_RUN__MEASURED_DROP)
            .holds(s -> Comparison.atMost("the circuit takes " + Figures.both(s.subject().getMeasuredDrop()) + ", out and back",
                s.subject().getMeasuredDrop(), OrdinaryDrop.limit(s.subject())))
            .remedy("Look for a bad joint first; then lay a larger conductor")
            .build();
    }
}
