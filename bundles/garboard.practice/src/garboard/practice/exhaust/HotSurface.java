// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import garboard.checks.Comparison;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.ExhaustRun;
import garboard.practice.Figures;
import garboard.quantity.Temperature;

/** What two rules on hot surfaces have in common: lagged, or not too hot to touch. */
final class HotSurface {

    private HotSurface() {
    }

    /** Whether the temperature of the surface has to be known; for {@code needsWhen}. */
    static boolean bare(Situation<ExhaustRun> situation) {
        return situation.subject().getDryPartsLagged() != Answer.YES;
    }

    static Comparison compare(Situation<ExhaustRun> situation, Limit<Temperature> hottestBare) {
        if (!bare(situation)) {
            return Comparison.holds("the dry parts are lagged", true);
        }
        Temperature surface = situation.subject().getDryPartSurfaceTemperature();
        return Comparison.atMost("the dry parts are bare and " + Figures.both(surface) + " hot", surface, hottestBare);
    }
}
