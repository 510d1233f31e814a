// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.Answer;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.quantity.Length;
import garboard.session.Field;
import garboard.session.OpenRecord;

class VerdictChangeTest {

    private static final String SEAT = "rawWater.siphonBreak";

    private final OpenRecord made = Judged.made();

    @Test
    void tellsNothingWhenNothingChanged() {
        Evaluation before = made.verdicts().evaluation();
        made.edits().set(field("title"), "A title that no check reads", "Title");

        assertThat(VerdictChange.between(before, made.verdicts().evaluation())).isEmpty();
    }

    @Test
    void tellsWhatGotWorseAndWhatGotBetter() {
        List<VerdictChange> changes = after(() -> made.edits().set(field("rawWater.siphonBreak.ventSeat.z"), Length.valueOf("320 mm"), "z"));

        assertThat(changes).extracting(change -> change.key().check()).containsExactly("SEAT-LOW", "SEAT-HIGH");
        assertThat(changes.getFirst().isWorse()).isTrue();
        assertThat(changes.getLast().isBetter()).isTrue();
    }

    @Test
    void tellsAnotherFigureWithoutCallingItWorse() {
        List<VerdictChange> changes = after(() -> made.edits().set(field("rawWater.siphonBreak.ventSeat.z"), Length.valueOf("210 mm"), "z"));

        assertThat(changes).hasSize(2).noneMatch(VerdictChange::standingChanged).noneMatch(VerdictChange::isWorse).noneMatch(VerdictChange::isBetter);
    }

    @Test
    void tellsWhatCameAndWhatWent() {
        var hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
        List<VerdictChange> came = after(() -> made.edits().add(made.record(),
            List.of(Literals.COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__HOSES), hose, "Add"));
        assertThat(came).singleElement().satisfies(change -> {
            assertThat(change.before()).isEmpty();
            assertThat(change.isWorse()).isTrue();
        });

        List<VerdictChange> went = after(() -> made.edits().remove(List.of(hose), "Remove"));
        assertThat(went).singleElement().satisfies(change -> {
            assertThat(change.after()).isEmpty();
            assertThat(change.isWorse()).isFalse();
            assertThat(change.isBetter()).isFalse();
        });
    }

    @Test
    void aRemedyTellsItsNewStandingAndWhatGotWorseByItAndIsUndoneAtOnce() {
        Verdict short1 = Judged.verdict(made, "SEAT-HIGH", SEAT);
        RemedyOutcome outcome = RemedyOutcome.apply(made, short1, "Remedy");

        assertThat(outcome.after()).hasValueSatisfying(now -> assertThat(now.standing()).isEqualTo(Standing.MEETS));
        assertThat(outcome.worse()).extracting(change -> change.key().check()).containsExactly("SEAT-LOW");
        assertThat(outcome.better()).isEmpty();

        made.edits().undo();
        assertThat(Judged.verdict(made, "SEAT-HIGH", SEAT).standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(Judged.verdict(made, "SEAT-LOW", SEAT).standing()).isEqualTo(Standing.MEETS);
        assertThat(made.edits().canUndo()).isFalse();
    }

    @Test
    void aRemedyThatIsWorkOnBoardCannotBeApplied() {
        Verdict inWordsOnly = Judged.verdict(made, "HOSE-CLAMPED", "rawWater.hoses[hose-1]");

        assertThatThrownBy(() -> RemedyOutcome.apply(made, inWordsOnly, "Remedy")).hasMessageContaining("HOSE-CLAMPED");
        assertThat(made.edits().canUndo()).isFalse();
    }

    /** Whatever the remedies of the examples are: each makes its own check meet or not apply, and undo brings back every verdict. */
    @ParameterizedTest
    @ValueSource(strings = {"motor-cruiser", "sailing-yacht", "passenger-boat"})
    void eachRemedyOfTheExamplesMendsItsCheck(String name) {
        OpenRecord record = Judged.example(name);
        Evaluation before = record.verdicts().evaluation();
        List<Verdict> mendable = before.verdicts().stream().filter(verdict -> verdict.needsAction())
            .filter(verdict -> verdict.remedy().filter(remedy -> !remedy.changes().isEmpty()).isPresent()).toList();
        assertThat(mendable).isNotEmpty();
        for (Verdict verdict : mendable) {
            RemedyOutcome outcome = RemedyOutcome.apply(record, verdict, "Remedy");
            assertThat(outcome.after()).as(verdict.check().id()).hasValueSatisfying(
                now -> assertThat(now.standing()).isIn(Standing.MEETS, Standing.DOES_NOT_APPLY));
            record.edits().undo();
            assertThat(VerdictChange.between(before, record.verdicts().evaluation())).as(verdict.check().id()).isEmpty();
        }
    }

    @Test
    void anAnswerThatMeetsARegulationIsTold() {
        List<VerdictChange> changes = after(() -> made.edits().set(field("alarms.remoteStop"), Answer.YES, "Answer"));

        assertThat(changes).singleElement().matches(VerdictChange::isBetter);
    }

    private List<VerdictChange> after(Runnable edit) {
        Evaluation before = made.verdicts().evaluation();
        edit.run();
        return VerdictChange.between(before, made.verdicts().evaluation());
    }

    private Field field(String key) {
        return made.field(key).orElseThrow();
    }
}
