// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.HullKind;
import garboard.model.InspectionAnswer;
import garboard.model.Photograph;
import garboard.model.WaterHoseRun;
import garboard.model.io.Items;
import garboard.quantity.Length;

class EditsTest {

    private final CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
    private final Edits edits = new Edits(record);
    private final List<RecordChange> changes = new ArrayList<>();
    private final Field beam = Field.of(record, Literals.COMMISSIONING_RECORD__VESSEL, Literals.VESSEL__BEAM);
    private final Field seat = Field.of(record, Literals.COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK,
        Literals.SIPHON_BREAK__VENT_SEAT, Literals.POINT__Z);

    @BeforeEach
    void listen() {
        edits.onChange(changes::add);
    }

    @Test
    void makesThePartsOnTheWayAndTakesThemBackWithTheValue() {
        edits.set(seat, Length.valueOf("640 mm"), "z");
        assertThat(record.getRawWater().getSiphonBreak().getVentSeat().getZ()).hasToString("640 mm");

        edits.undo();
        assertThat(record.getRawWater()).isNull();
        edits.redo();
        assertThat(seat.value()).contains(Length.valueOf("640 mm"));
    }

    @Test
    void keepsTheUnitAndAccuracyThatAPersonGave() {
        edits.set(beam, Length.valueOf("10 ft"), "Beam");
        edits.set(beam, Length.valueOf("3.05 m ±0.01 m"), "Beam");
        assertThat(record.getVessel().getBeam()).hasToString("3.05 m ±0.01 m");
        edits.undo();
        assertThat(record.getVessel().getBeam()).hasToString("10 ft");
    }

    @Test
    void leavesNothingToUndoWhenTheSameIsEnteredAgainOrAnEmptyFieldIsEmptied() {
        edits.clear(beam, "Beam");
        assertThat(edits.canUndo()).isFalse();

        edits.set(beam, Length.valueOf("3 m"), "Beam");
        edits.set(beam, Length.valueOf("3 m"), "Beam");
        edits.undo();
        assertThat(edits.canUndo()).isFalse();
        assertThat(beam.value()).isEmpty();
    }

    @Test
    void emptiesAFieldSoThatItCountsAsNotEntered() {
        edits.set(Field.of(record, Literals.COMMISSIONING_RECORD__VESSEL, Literals.VESSEL__HULL_KIND), HullKind.SAILING_MONOHULL, "Hull");
        edits.clear(Field.of(record.getVessel(), Literals.VESSEL__HULL_KIND), "Hull");

        assertThat(record.getVessel().eIsSet(Literals.VESSEL__HULL_KIND)).isFalse();
    }

    @Test
    void addsToAListBelowAPartThatDoesNotExistYet() {
        WaterHoseRun hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
        edits.add(record, List.of(Literals.COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__HOSES), hose, "Hose");
        edits.add(record, List.of(Literals.COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__HOSES),
            GarboardFactory.eINSTANCE.createWaterHoseRun(), "Hose");
        assertThat(record.getRawWater().getHoses()).hasSize(2).first().isSameAs(hose);

        edits.undo();
        edits.undo();
        assertThat(record.getRawWater()).isNull();
    }

    @Test
    void putsAnItemWhereItBelongsAndBack() {
        List<WaterHoseRun> hoses = threeHoses();
        edits.move(hoses.getFirst(), 2, "Move");
        assertThat(record.getRawWater().getHoses()).containsExactly(hoses.get(1), hoses.get(2), hoses.get(0));
        edits.undo();
        assertThat(record.getRawWater().getHoses()).containsExactlyElementsOf(hoses);

        WaterHoseRun between = edits.insert(record.getRawWater(), Literals.RAW_WATER_CIRCUIT__HOSES, 1, GarboardFactory.eINSTANCE.createWaterHoseRun(), "Insert");
        assertThat(record.getRawWater().getHoses().indexOf(between)).isEqualTo(1);
    }

    @Test
    void takesOutItemsWithWhatWasTypedIntoThemAndBringsBothBack() {
        try (Items.Watch ids = Items.of(record).watch()) {
            List<WaterHoseRun> hoses = threeHoses();
            Field bore = Field.of(hoses.get(1), Literals.WATER_HOSE_RUN__BORE);
            edits.typing(bore, "Bore").leaveUnread("three fingers");
            edits.typing(beam, "Beam").leaveUnread("wide");

            edits.remove(List.of(hoses.get(1), hoses.get(2)), "Remove");
            assertThat(record.getRawWater().getHoses()).containsExactly(hoses.getFirst());
            assertThat(record.getUnreadEntries()).extracting("text").containsExactly("wide");

            edits.undo();
            assertThat(record.getRawWater().getHoses()).containsExactlyElementsOf(hoses);
            assertThat(edits.unread(bore)).contains("three fingers");
        }
    }

    @Test
    void takesOutAPhotographWithTheAnswersThatPointAtIt() {
        Photograph photograph = edits.add(record, List.of(Literals.COMMISSIONING_RECORD__PHOTOGRAPHS), GarboardFactory.eINSTANCE.createPhotograph(), "Photo");
        Photograph other = edits.add(record, List.of(Literals.COMMISSIONING_RECORD__PHOTOGRAPHS), GarboardFactory.eINSTANCE.createPhotograph(), "Photo");
        InspectionAnswer answer = GarboardFactory.eINSTANCE.createInspectionAnswer();
        answer.getPhotographs().addAll(List.of(photograph, other));
        edits.add(record, List.of(Literals.COMMISSIONING_RECORD__INSPECTIONS), answer, "Answer");

        edits.remove(List.of(photograph), "Remove");
        assertThat(answer.getPhotographs()).containsExactly(other);
        edits.undo();
        assertThat(answer.getPhotographs()).containsExactly(photograph, other);
        assertThat(record.getPhotographs()).containsExactly(photograph, other);
    }

    @Test
    void refusesAValueOfAnotherKindAndLeavesTheRecordAsItWas() {
        edits.set(beam, Length.valueOf("3 m"), "Beam");
        edits.typing(beam, "Beam").leaveUnread("3 metres or so");

        assertThatThrownBy(() -> edits.set(beam, "three metres", "Beam")).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("Beam");
        assertThat(edits.unread(beam)).contains("3 metres or so");
        edits.undo();
        assertThat(beam.value()).contains(Length.valueOf("3 m"));
    }

    @Test
    void setsSeveralFieldsInOneStepAndForgetsWhatCouldNotBeReadThere() {
        edits.set(beam, Length.valueOf("3 m"), "Beam");
        edits.typing(beam, "Beam").leaveUnread("?");
        edits.setAll(List.of(new Edits.Setting(record.getVessel(), Literals.VESSEL__BEAM, Length.valueOf("4 m")),
            new Edits.Setting(record.getVessel(), Literals.VESSEL__DRAUGHT, Length.valueOf("1 m"))), "Both");

        assertThat(edits.undoLabel()).contains("Both");
        assertThat(edits.unread(beam)).isEmpty();
        edits.undo();
        assertThat(edits.unread(beam)).contains("?");
        assertThat(record.getVessel().getDraught()).isNull();
    }

    @Test
    void setsAFieldTwiceInOneStepAndTakesOutAPartTogetherWithWhatIsInIt() {
        edits.set(beam, Length.valueOf("3 m"), "Beam");
        edits.typing(beam, "Beam").leaveUnread("?");
        edits.setAll(List.of(new Edits.Setting(record.getVessel(), Literals.VESSEL__BEAM, Length.valueOf("4 m")),
            new Edits.Setting(record.getVessel(), Literals.VESSEL__BEAM, Length.valueOf("5 m"))), "Both");
        assertThat(beam.value()).contains(Length.valueOf("5 m"));

        List<WaterHoseRun> hoses = threeHoses();
        edits.typing(Field.of(hoses.getFirst(), Literals.WATER_HOSE_RUN__BORE), "Bore").leaveUnread("?");
        edits.remove(List.of(record.getRawWater(), hoses.getFirst(), hoses.getFirst()), "Remove");
        assertThat(record.getRawWater()).isNull();
        edits.undo();
        assertThat(record.getRawWater().getHoses()).containsExactlyElementsOf(hoses);
    }

    @Test
    void tellsEachEditUndoAndRedoOnceWithWhatItTouched() {
        edits.set(beam, Length.valueOf("3 m"), "Beam");
        edits.set(beam, Length.valueOf("4 m"), "Beam");
        edits.undo();
        edits.redo();

        assertThat(changes).hasSize(4);
        assertThat(changes.getFirst().structural()).isTrue();
        assertThat(changes.subList(1, 4)).allSatisfy(change -> {
            assertThat(change.structural()).isFalse();
            assertThat(change.concerns(beam)).isTrue();
            assertThat(change.concerns(seat)).isFalse();
            assertThat(change.place()).contains("vessel.beam");
        });
    }

    @Test
    void isUnsavedFromTheFirstEditUntilItIsUndone() {
        assertThat(edits.unsaved()).isFalse();
        edits.set(beam, Length.valueOf("3 m"), "Beam");
        assertThat(edits.unsaved()).isTrue();
        edits.saved();
        assertThat(edits.unsaved()).isFalse();
        edits.undo();
        assertThat(edits.unsaved()).isTrue();
        edits.redo();
        assertThat(edits.unsaved()).isFalse();
    }

    @Test
    void showsTheFieldOfAChangeTheListOfAnItemAndNoPlaceForAnAcceptance() {
        edits.set(seat, Length.valueOf("1 m"), "z");
        assertThat(changes.getLast().place()).contains("rawWater");
        List<WaterHoseRun> hoses = threeHoses();
        assertThat(changes.getLast().place()).contains("rawWater.hoses");
        edits.set(Field.of(hoses.getFirst(), Literals.WATER_HOSE_RUN__BORE), Length.valueOf("19 mm"), "Bore");
        assertThat(changes.getLast().place().orElseThrow()).startsWith("rawWater.hoses[").endsWith("].bore");
        edits.typing(beam, "Beam").leaveUnread("wide");
        assertThat(changes.getLast().place()).contains("vessel.beam");
        assertThat(changes.getLast().structural()).isFalse();
        edits.add(record, List.of(Literals.COMMISSIONING_RECORD__ACCEPTANCES), GarboardFactory.eINSTANCE.createAcceptance(), "Accept");
        assertThat(changes.getLast().place()).isEmpty();
    }

    private List<WaterHoseRun> threeHoses() {
        var hoses = new ArrayList<WaterHoseRun>();
        for (int count = 0; count < 3; count++) {
            hoses.add(edits.add(record, List.of(Literals.COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__HOSES),
                GarboardFactory.eINSTANCE.createWaterHoseRun(), "Hose"));
        }
        return hoses;
    }
}
