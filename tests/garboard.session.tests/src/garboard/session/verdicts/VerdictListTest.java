// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.StopStanding;

class VerdictListTest {

    private static final VerdictFilter ALL = new VerdictFilter(EnumSet.allOf(Standing.class), Optional.empty(), "");

    private final OpenRecord made = Judged.made();

    @Test
    void groupsWorstFirstAndTheGravestFirstWithinAGroup() {
        assertThat(words(list(made, ALL))).containsExactly("FALLS_SHORT 3", "HOSE-CLAMPED rawWater.hoses[hose-1]", "REMOTE-STOP alarms",
            "SEAT-HIGH rawWater.siphonBreak", "CANNOT_TELL 1", "HOSE-CLAMPED rawWater.hoses[hose-2]", "MEETS 1", "SEAT-LOW rawWater.siphonBreak");
    }

    @Test
    void leavesAwayAHiddenStandingAndStillCountsIt() {
        VerdictList list = list(made, ALL.with(Standing.FALLS_SHORT, false));

        assertThat(words(list)).first().isEqualTo("CANNOT_TELL 1");
        assertThat(list.count(Standing.FALLS_SHORT)).isEqualTo(3);
        assertThat(list.size()).isEqualTo(2);
    }

    @Test
    void keepsTheVerdictThatAPersonLooksAtThoughItsStandingIsHidden() {
        VerdictKey kept = new VerdictKey("SEAT-LOW", "rawWater.siphonBreak");
        VerdictFilter withoutMet = ALL.with(Standing.MEETS, false);

        assertThat(list(made, withoutMet).place(kept)).isEmpty();
        VerdictList list = VerdictList.of(made.verdicts().evaluation(), withoutMet, Optional.of(kept));
        assertThat(list.rows().get(list.place(kept).orElseThrow())).isInstanceOfSatisfying(VerdictList.Line.class,
            line -> assertThat(line.key()).isEqualTo(kept));
    }

    @Test
    void keepsToOneStop() {
        VerdictList list = list(made, ALL.at(Optional.of(Stop.ALARMS)));

        assertThat(words(list)).containsExactly("FALLS_SHORT 1", "REMOTE-STOP alarms");
        assertThat(list.count(Standing.MEETS)).isZero();
    }

    @Test
    void findsByIdTitleSentenceBasisAndPlaceWhateverTheCase() {
        assertThat(found("seat-high")).containsExactly("SEAT-HIGH rawWater.siphonBreak");
        assertThat(found("VENT SEAT reach")).containsExactly("SEAT-LOW rawWater.siphonBreak");
        assertThat(found("stands at 200")).hasSize(2);
        assertThat(found("handbook, from memory")).containsExactly("SEAT-HIGH rawWater.siphonBreak");
        assertThat(found("hose-1")).containsExactly("HOSE-CLAMPED rawWater.hoses[hose-1]");
        assertThat(found("  ")).hasSize(5);
        assertThat(found("seat clamps")).isEmpty();
    }

    @Test
    void isEmptyWhenEverythingIsHidden() {
        VerdictList list = list(made, new VerdictFilter(EnumSet.noneOf(Standing.class), Optional.empty(), ""));

        assertThat(list.isEmpty()).isTrue();
        assertThat(list.count(Standing.FALLS_SHORT)).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"motor-cruiser", "sailing-yacht", "passenger-boat"})
    void listsEachVerdictOfAnExampleOnceAndEachStopOfItWhole(String name) {
        Evaluation evaluation = Judged.example(name).verdicts().evaluation();
        VerdictList list = VerdictList.of(evaluation, ALL, Optional.empty());

        assertThat(list.rows().stream().filter(VerdictList.Line.class::isInstance).map(row -> ((VerdictList.Line) row).verdict()))
            .containsExactlyElementsOf(evaluation.worstFirst());
        for (Verdict verdict : evaluation.verdicts()) {
            assertThat(list.place(VerdictKey.of(verdict))).isPresent();
        }
        for (Stop stop : Stop.values()) {
            assertThat(VerdictList.of(evaluation, ALL.at(Optional.of(stop)), Optional.empty()).size())
                .isEqualTo((int) evaluation.verdicts().stream().filter(verdict -> StopStanding.stop(verdict) == stop).count());
        }
    }

    @Test
    void hidesWhatDoesNotApplyUnlessAsked() {
        Evaluation evaluation = Judged.example("motor-cruiser").verdicts().evaluation();
        VerdictList list = VerdictList.of(evaluation, VerdictFilter.usual(), Optional.empty());

        assertThat(list.size()).isEqualTo(evaluation.verdicts().size() - (int) evaluation.count(Standing.DOES_NOT_APPLY));
        assertThat(list.count(Standing.DOES_NOT_APPLY)).isEqualTo((int) evaluation.count(Standing.DOES_NOT_APPLY)).isPositive();
    }

    private List<String> found(String search) {
        return words(list(made, ALL.searching(search))).stream().filter(row -> row.contains("-")).toList();
    }

    private static VerdictList list(OpenRecord record, VerdictFilter filter) {
        return VerdictList.of(record.verdicts().evaluation(), filter, Optional.empty());
    }

    private static List<String> words(VerdictList list) {
        return list.rows().stream().map(row -> switch (row) {
            case VerdictList.Heading heading -> heading.standing() + " " + heading.count();
            case VerdictList.Line line -> line.key().check() + " " + line.key().subject();
        }).toList();
    }
}
