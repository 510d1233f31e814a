// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CURRENT;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__STRAND_CLASS;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.CableRun;
import garboard.physics.cable.CableSizing;
import garboard.physics.cable.ConductorSize;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Voltage;

/** The voltage drop of an ordinary direct-current circuit by its conductor, length and current. */
final class DropComputed {

    private DropComputed() {
    }

    static Check<CableRun> check() {
        return OrdinaryDrop.check("CABLE-DROP")
            .title("Conductor is large enough for its length and current")
            .basis(Sources.ABYC_E_11.othersSay("no federal rule limits the drop; the general 10 % of ISO 13297 is from memory"))
            .applies(CableConditions.readableSize())
            .needs(CABLE_RUN__LENGTH, CABLE_RUN__CURRENT)
            .needsWhen(s -> CableRuns.isMetric(s.subject()), path(CABLE_RUN__STRAND_CLASS))
            .uses(CABLE_RUN__CONDUCTOR_TEMPERATURE)
            .holds(DropComputed::compare)
            .remedyAtTheWorst("Lay a larger conductor, shorten the run or put a relay near the load", DropComputed::remedy)
            .build();
    }

    private static Comparison compare(Situation<CableRun> s) {
        CableRun run = s.subject();
        Voltage drop = OrdinaryDrop.computed(run);
        return Comparison.atMost(Figures.both(run.getCurrent()) + " out and back over " + Figures.both(OrdinaryDrop.loop(run)) + " of "
            + CableRuns.size(run) + " take " + Figures.both(drop) + " with the copper at " + Figures.both(OrdinaryDrop.copper(run)),
            withAccuracy(drop, run), OrdinaryDrop.limit(run));
    }

    private static Voltage withAccuracy(Voltage drop, CableRun run) {
        double share = OrdinaryDrop.uncertainShare(run);
        return share > 0 ? drop.withAccuracy(Voltage.of(share * drop.si())) : drop;
    }

    private static Optional<Remedy> remedy(Situation<CableRun> s) {
        CableRun run = s.subject();
        return (CableRuns.size(run).series() == ConductorSize.Series.AWG ? CableSizing.smallestAwg(OrdinaryDrop.task(run))
            : CableSizing.smallestIec(OrdinaryDrop.task(run), CableRuns.make(run))).map(size -> CableRuns.replace(run, size));
    }
}
