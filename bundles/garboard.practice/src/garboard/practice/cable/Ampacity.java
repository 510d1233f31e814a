// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTORS_IN_BUNDLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CURRENT;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__INSULATION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__IN_ENGINE_SPACE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__LENGTH;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.physics.cable.ConductorSize;
import garboard.practice.Figures;
import garboard.quantity.Current;

/** The current of a circuit against what its conductor may carry for ever. */
final class Ampacity {

    private Ampacity() {
    }

    /** Circuits of less than 50 V, against Table 5 and note 1: everything but authority. */
    static Check.Builder<CableRun> below50V(String id) {
        return against(id, Table5::below50V, Table5::originBelow50V)
            .among(CableRuns::below50V, CableRuns.decidingVoltage())
            .limit("33 CFR 183.425 Table 5 at 30 degC, in an engine space times note 1 (0.85 at 105 degC); a metric size counts "
                + "as the largest gauge within it; cranking conductors and pigtails left out")
            .applies(CableConditions.workingCircuit());
    }

    /** Circuits of 50 V or more, against Table 5 and notes 1 and 2: everything but authority. */
    static Check.Builder<CableRun> from50V(String id) {
        return against(id, Table5::from50V, Table5::originFrom50V)
            .among(CableRuns::worksFrom50V, CableRuns.decidingVoltage())
            .limit("33 CFR 183.425 Table 5 at 30 degC, in an engine space times note 1, from three current-carrying conductors "
                + "together times note 2 (0.70); a metric size counts as the largest gauge within it")
            .needs(CABLE_RUN__CONDUCTORS_IN_BUNDLE);
    }

    private static Check.Builder<CableRun> against(String id, BiFunction<CableRun, ConductorSize, Optional<Current>> allowed,
        Function<CableRun, String> origin) {
        return Check.check(id, CableRun.class)
            .why("A conductor that carries too much cooks its insulation, unseen in the bundle, until it shorts and burns.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .applies(CableConditions.readableSize())
            .applies(CableConditions.longerThanPigtail())
            .needs(CABLE_RUN__CURRENT, CABLE_RUN__INSULATION, CABLE_RUN__IN_ENGINE_SPACE)
            .uses(CABLE_RUN__LENGTH)
            .holds(s -> compare(s.subject(), allowed.apply(s.subject(), CableRuns.size(s.subject()))
                .map(current -> Limit.of(current, origin.apply(s.subject())))))
            .remedyAtTheWorst("Lay a larger conductor or one with insulation for a higher temperature, or split the bundle", s -> CableRuns
                .nextThatWillDo(s.subject(), size -> allowed.apply(s.subject(), size)
                    .filter(current -> CableRuns.carriesAtMost(s.subject(), current)).isPresent())
                .map(size -> CableRuns.replace(s.subject(), size)));
    }

    private static Comparison compare(CableRun run, Optional<Limit<Current>> allowed) {
        String found = "the circuit carries " + Figures.both(run.getCurrent()) + " in " + Table5.inWords(run)
            + (run.getInEngineSpace() == Answer.YES ? " in an engine space" : " outside engine spaces");
        return allowed.map(most -> Comparison.atMost(found + ", which may carry " + Figures.both(most.value()), run.getCurrent(), most))
            .orElseGet(() -> Comparison.holds(found + ", which is thinner than 18 AWG, where the table begins", false));
    }
}
