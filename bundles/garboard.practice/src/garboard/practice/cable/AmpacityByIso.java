// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CURRENT;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.CableRun;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Current;

/** The current of a circuit stays within the annex of ISO 10133. */
final class AmpacityByIso {

    private AmpacityByIso() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-AMPACITY-ISO", CableRun.class)
            .among(run -> CableRuns.isOutputCable(run) || !CableRuns.isCranking(run) && !CableRuns.isGrounding(run), path(CABLE_RUN__FUNCTION))
            .title("Metric conductor may carry its circuit's current")
            .why("A conductor that carries too much cooks its insulation, unseen in the bundle, until it shorts and burns.")
            .basis(Sources.ISO_10133_AMPACITY.othersSay("33 CFR 183.425 Table 5; its bundles begin at three conductors of 50 V or more"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("ISO 10133 annex A; engine space 0.75 at 70 degC, 0.82 at 90 degC, 0.86 at 105 degC; four to six conductors together 0.7")
            .applies(CableConditions.scopeOfIso13297())
            .needsWhen(CableConditions::alternates, path(GENERATOR_SET__PHASES))
            .applies(IsoAnnex.listed())
            .needs(CABLE_RUN__CURRENT)
            .holds(AmpacityByIso::compare)
            .remedyAtTheWorst("Lay a larger conductor or one with insulation for a higher temperature, or split the bundle", s -> CableRuns
                .nextThatWillDo(s.subject(), size -> IsoAnnex.allowed(s.subject(), size)
                    .filter(allowed -> CableRuns.carriesAtMost(s.subject(), allowed)).isPresent())
                .map(size -> CableRuns.replace(s.subject(), size)))
            .build();
    }

    private static Comparison compare(Situation<CableRun> s) {
        CableRun run = s.subject();
        Current allowed = IsoAnnex.allowed(run, CableRuns.size(run)).orElseThrow();
        return Comparison.atMost("the circuit carries " + Figures.both(run.getCurrent()) + " in " + Table5.inWords(run) + ", which may carry "
            + Figures.both(allowed) + " in its place", run.getCurrent(), Limit.of(allowed, "ISO 10133 annex A, from memory"));
    }
}
