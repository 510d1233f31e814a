// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.CrankingAttempt;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.quantity.TimeSpan;

class EditsTogetherTest {

    private final CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
    private final Edits edits = new Edits(record);
    private final List<RecordChange> changes = new ArrayList<>();

    EditsTogetherTest() {
        edits.onChange(changes::add);
    }

    @Test
    void makesSeveralEditsOneStepToldOnce() {
        edits.together("Tried", this::addTwoAttempts);

        assertThat(changes).hasSize(1);
        assertThat(edits.undoLabel()).contains("Tried");
        edits.undo();
        assertThat(record.getTrial()).isNull();
        edits.redo();
        assertThat(record.getTrial().getAttempts()).extracting(CrankingAttempt::getDuration)
            .containsExactly(TimeSpan.valueOf("4 s"), null);
    }

    @Test
    void leavesNothingToUndoWhenNothingWasEdited() {
        edits.together("Nothing", () -> { });

        assertThat(edits.canUndo()).isFalse();
        assertThat(changes).isEmpty();
    }

    @Test
    void keepsWhatWasDoneBeforeAFaultInOneStep() {
        try {
            edits.together("Tried", () -> {
                addTwoAttempts();
                throw new IllegalStateException("half way");
            });
        } catch (IllegalStateException expected) {
            assertThat(expected).hasMessage("half way");
        }
        edits.set(Field.of(record, Literals.COMMISSIONING_RECORD__TITLE), "After", "Title");

        edits.undo();
        assertThat(record.getTrial().getAttempts()).hasSize(2);
        edits.undo();
        assertThat(record.getTrial()).isNull();
    }

    @Test
    void belongsToTheOuterOfTwo() {
        edits.together("Outer", () -> {
            edits.set(Field.of(record, Literals.COMMISSIONING_RECORD__TITLE), "A", "Title");
            edits.together("Inner", this::addTwoAttempts);
        });

        edits.undo();
        assertThat(record.getTrial()).isNull();
        assertThat(record.getTitle()).isNull();
        assertThat(edits.canUndo()).isFalse();
    }

    @Test
    void insertsAtAPlaceInAList() {
        addTwoAttempts();
        CrankingAttempt between = GarboardFactory.eINSTANCE.createCrankingAttempt();

        edits.insert(record.getTrial(), Literals.TRIAL__ATTEMPTS, 1, between, "Attempt");

        assertThat(record.getTrial().getAttempts()).hasSize(3);
        assertThat(record.getTrial().getAttempts().get(1)).isSameAs(between);
        edits.undo();
        assertThat(record.getTrial().getAttempts()).hasSize(2).doesNotContain(between);
    }

    private void addTwoAttempts() {
        var path = List.of(Literals.COMMISSIONING_RECORD__TRIAL, Literals.TRIAL__ATTEMPTS);
        CrankingAttempt first = edits.add(record, path, GarboardFactory.eINSTANCE.createCrankingAttempt(), "Attempt");
        edits.set(Field.of(first, Literals.CRANKING_ATTEMPT__DURATION), TimeSpan.valueOf("4 s"), "Duration");
        edits.add(record, path, GarboardFactory.eINSTANCE.createCrankingAttempt(), "Attempt");
    }
}
