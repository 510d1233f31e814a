// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.WaterHoseRun;
import garboard.quantity.Length;

class TypingTest {

    private final CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
    private final Edits edits = new Edits(record);
    private final Field beam = Field.of(record, Literals.COMMISSIONING_RECORD__VESSEL, Literals.VESSEL__BEAM);
    private final Field draught = Field.of(record, Literals.COMMISSIONING_RECORD__VESSEL, Literals.VESSEL__DRAUGHT);
    private final Typing typing = edits.typing(beam, "Beam");

    @Test
    void followsEachLetterAndIsTakenBackAtOnce() {
        typing.leaveUnread("3");
        assertThat(beam.value()).isEmpty();
        typing.leaveUnread("3/");
        typing.enter(Length.valueOf("3/4 m"));
        assertThat(beam.value()).contains(Length.valueOf("3/4 m"));
        assertThat(edits.unread(beam)).isEmpty();

        assertThat(edits.undoLabel()).contains("Beam");
        edits.undo();
        assertThat(record.getVessel()).isNull();
        assertThat(record.getUnreadEntries()).isEmpty();
        assertThat(edits.canUndo()).isFalse();
    }

    @Test
    void keepsWhatCannotBeReadAsTypedInPlaceOfTheValue() {
        typing.enter(Length.valueOf("3 m"));
        typing.leaveUnread("3 m?");

        assertThat(beam.value()).isEmpty();
        assertThat(edits.unread(beam)).contains("3 m?");
        typing.leaveUnread("3 m??");
        assertThat(record.getUnreadEntries()).singleElement().extracting("place", "text").containsExactly("vessel.beam", "3 m??");
        typing.clear();
        assertThat(edits.unread(beam)).isEmpty();
    }

    @Test
    void readingTheSameAgainIsNoEdit() {
        var changes = new ArrayList<RecordChange>();
        typing.enter(Length.valueOf("3 m"));
        edits.onChange(changes::add);
        typing.enter(Length.valueOf("3 m"));
        typing.leaveUnread("x");
        typing.leaveUnread("x");

        assertThat(changes).hasSize(1);
    }

    @Test
    void beginsANewStepAfterAnotherEdit() {
        typing.enter(Length.valueOf("3 m"));
        edits.set(draught, Length.valueOf("1 m"), "Draught");
        typing.enter(Length.valueOf("3.2 m"));

        edits.undo();
        assertThat(beam.value()).contains(Length.valueOf("3 m"));
        edits.undo();
        assertThat(draught.value()).isEmpty();
    }

    @Test
    void beginsANewStepAfterUndoAlsoWhenThatIsDoneAgain() {
        typing.enter(Length.valueOf("3 m"));
        edits.undo();
        edits.redo();
        typing.enter(Length.valueOf("4 m"));
        edits.undo();
        assertThat(beam.value()).contains(Length.valueOf("3 m"));

        edits.undo();
        typing.enter(Length.valueOf("5 m"));
        assertThat(edits.canRedo()).isFalse();
        assertThat(beam.value()).contains(Length.valueOf("5 m"));
    }

    @Test
    void beginsANewStepAfterASaveSoThatTheRestCountsAsUnsaved() {
        typing.enter(Length.valueOf("3 m"));
        edits.saved();
        typing.enter(Length.valueOf("3.2 m"));

        assertThat(edits.unsaved()).isTrue();
        edits.undo();
        assertThat(edits.unsaved()).isFalse();
        assertThat(beam.value()).contains(Length.valueOf("3 m"));
    }

    @Test
    void doesNotJoinTheStepOfAnotherField() {
        typing.enter(Length.valueOf("3 m"));
        edits.typing(draught, "Draught").enter(Length.valueOf("1 m"));

        edits.undo();
        assertThat(beam.value()).contains(Length.valueOf("3 m"));
        assertThat(draught.value()).isEmpty();
    }

    @Test
    void doesNothingWhenTheItemWentWhileItWasTypedInto() {
        WaterHoseRun hose = edits.add(record, List.of(Literals.COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__HOSES),
            GarboardFactory.eINSTANCE.createWaterHoseRun(), "Hose");
        Typing bore = edits.typing(Field.of(hose, Literals.WATER_HOSE_RUN__BORE), "Bore");
        bore.enter(Length.valueOf("1 mm"));
        edits.remove(List.of(hose), "Remove");

        bore.enter(Length.valueOf("19 mm"));
        bore.leaveUnread("19 mmm");
        assertThat(edits.undoLabel()).contains("Remove");
        assertThat(record.getUnreadEntries()).isEmpty();
        edits.undo();
        assertThat(record.getRawWater().getHoses().getFirst().getBore()).hasToString("1 mm");
    }
}
