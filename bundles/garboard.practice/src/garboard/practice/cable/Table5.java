// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import java.util.Optional;

import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.model.InsulationRating;
import garboard.physics.cable.Ampacity33Cfr183;
import garboard.physics.cable.ConductorRun;
import garboard.physics.cable.ConductorSeries;
import garboard.physics.cable.ConductorSize;
import garboard.quantity.Current;

/**
 * Permitted current of a cable run by 33 CFR 183.425 Table 5 and its notes. A metric size counts as the largest gauge that it contains, and
 * insulation of 70 degC, which the table does not list, as 60 degC.
 */
final class Table5 {

    /** Fewer conductors together are no bundle by note 2. */
    private static final int FIRST_BUNDLE = 3;

    private Table5() {
    }

    /** The run as the table sees it; nothing where the conductor is thinner than 18 AWG, with which the table begins. */
    static Optional<ConductorRun> conductor(CableRun run, ConductorSize size) {
        return ConductorSeries.largest(ConductorSeries.AWG, size.area()).map(gauge -> {
            ConductorRun bare = ConductorRun.of(gauge, rating(run));
            return run.getInEngineSpace() == Answer.YES ? bare.withEngineSpace() : bare;
        });
    }

    /** Permitted current below 50 V in a size: the table and note 1 for engine spaces. */
    static Optional<Current> below50V(CableRun run, ConductorSize size) {
        return conductor(run, size).map(Ampacity33Cfr183::allowedBelow50V);
    }

    /** Permitted current from 50 V up in a size: the table, note 1 for engine spaces and note 2 for bundles. */
    static Optional<Current> from50V(CableRun run, ConductorSize size) {
        return conductor(run, size).map(bare -> Ampacity33Cfr183.allowedFrom50V(bare.withCarryingTogether(run.getConductorsInBundle())));
    }

    /** Whose figure {@link #below50V} is: the table was read, note 1 was not. */
    static String originBelow50V(CableRun run) {
        String table = "33 CFR 183.425 Table 5";
        return run.getInEngineSpace() != Answer.YES ? table
            : table + (run.getInsulation() == InsulationRating.C105 ? " with note 1 as quoted" : " with note 1 from memory");
    }

    /** Whose figure {@link #from50V} is: note 2 was seen where others quote it. */
    static String originFrom50V(CableRun run) {
        return originBelow50V(run) + (run.getConductorsInBundle() < FIRST_BUNDLE ? "" : ", note 2 as quoted");
    }

    /** Size and insulation, such as {@code 10 AWG with insulation for 105 degC}. */
    static String inWords(CableRun run) {
        return CableRuns.size(run) + " with insulation for " + run.getInsulation().name().substring(1) + " degC";
    }

    private static garboard.physics.cable.InsulationRating rating(CableRun run) {
        return run.getInsulation() == InsulationRating.C70 ? garboard.physics.cable.InsulationRating.C60
            : garboard.physics.cable.InsulationRating.valueOf(run.getInsulation().name());
    }
}
