// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import garboard.checks.Evaluation;
import garboard.checks.Verdict;
import garboard.session.OpenRecord;

class ShortfallsTest {

    private final OpenRecord made = Judged.made();
    private final Evaluation evaluation = made.verdicts().evaluation();

    @Test
    void goesFromTheWorstOnAndRound() {
        var seen = new ArrayList<String>();
        Optional<VerdictKey> chosen = Optional.empty();
        for (int step = 0; step < 4; step++) {
            chosen = Shortfalls.next(evaluation, chosen).map(VerdictKey::of);
            seen.add(chosen.orElseThrow().check());
        }
        assertThat(seen).containsExactly("HOSE-CLAMPED", "REMOTE-STOP", "SEAT-HIGH", "HOSE-CLAMPED");
    }

    @Test
    void goesBackFromTheMildest() {
        Optional<VerdictKey> last = Shortfalls.previous(evaluation, Optional.empty()).map(VerdictKey::of);
        assertThat(last.orElseThrow().check()).isEqualTo("SEAT-HIGH");
        assertThat(Shortfalls.previous(evaluation, last).orElseThrow().check().id()).isEqualTo("REMOTE-STOP");
    }

    @Test
    void beginsWithTheWorstAgainWhenTheChosenOneIsMended() {
        Verdict high = Judged.verdict(made, "SEAT-HIGH", "rawWater.siphonBreak");
        RemedyOutcome.apply(made, high, "Remedy");

        assertThat(Shortfalls.next(made.verdicts().evaluation(), Optional.of(VerdictKey.of(high))).orElseThrow().check().id()).isEqualTo("HOSE-CLAMPED");
    }

    @Test
    void findsNothingWhereNothingNeedsAction() {
        assertThat(Shortfalls.next(new Evaluation(List.of(), List.of(), Judged.DAY), Optional.empty())).isEmpty();
    }

    @Test
    void tellsHowFarTheRecordIs() {
        assertThat(Progress.of(evaluation)).isEqualTo(new Progress(4, 5, 3));
    }
}
