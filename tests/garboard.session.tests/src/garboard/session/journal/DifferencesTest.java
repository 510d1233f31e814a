// SPDX-License-Identifier: EPL-2.0
package garboard.session.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.HullKind;
import garboard.model.RecordPath;
import garboard.model.WaterHoseRun;
import garboard.model.io.RecordFile;
import garboard.quantity.Length;
import garboard.session.files.OpenedRecords;

class DifferencesTest {

    private CommissioningRecord before;
    private CommissioningRecord now;

    @BeforeEach
    void two() {
        before = OpenedRecords.example("motor-cruiser").record();
        now = OpenedRecords.example("motor-cruiser").record();
    }

    private List<String> found() {
        return Differences.between(before, now).stream().map(one -> RecordPath.key(one.owner(), one.feature()) + ": "
            + one.before().map(Object::toString).orElse("-") + " > " + one.now().map(Object::toString).orElse("-")).toList();
    }

    @Test
    void findsNoneBetweenEqualRecords() {
        assertThat(found()).isEmpty();
    }

    @Test
    void tellsWhatWasEnteredChangedAndEmptied() {
        before.getVessel().setName("Wren");
        now.getVessel().setName("Robin");
        before.getVessel().setBeam(Length.valueOf("3 m"));
        now.getVessel().setBeam(null);
        before.getVessel().setHullKind(HullKind.NOT_ENTERED);
        now.getVessel().setHullKind(HullKind.MOTOR_PLANING);

        assertThat(found()).containsExactlyInAnyOrder("vessel.name: Wren > Robin", "vessel.beam: 3 m > -", "vessel.hullKind: - > motor-planing");
    }

    @Test
    void takesTheSameLengthInAnotherUnitForADifference() {
        before.getVessel().setBeam(Length.valueOf("25.4 mm"));
        now.getVessel().setBeam(Length.valueOf("1 in"));
        assertThat(found()).containsExactly("vessel.beam: 25.4 mm > 1 in");
    }

    @Test
    void countsEveryFieldOfAPartThatIsNew() {
        before.setVentilation(null);
        now.setVentilation(GarboardFactory.eINSTANCE.createVentilation());
        assertThat(found()).as("an empty part is nothing entered").isEmpty();

        before.setVessel(null);
        now.getVessel().eClass().getEAllAttributes().forEach(now.getVessel()::eUnset);
        now.getVessel().setName("Wren");
        now.getVessel().setPassengers(4);
        assertThat(found()).containsExactlyInAnyOrder("vessel.name: - > Wren", "vessel.passengers: - > 4");
    }

    @Test
    void knowsAnItemByItsIdWhereverItStands() {
        now.getRawWater().getHoses().move(0, now.getRawWater().getHoses().size() - 1);
        assertThat(found()).isEmpty();

        WaterHoseRun gone = now.getRawWater().getHoses().removeFirst();
        assertThat(found()).isNotEmpty().allMatch(line -> line.startsWith("rawWater.hoses[" + gone.getId() + "]") && line.endsWith(" > -"));
    }

    @Test
    void countsAnItemWithNothingInIt() {
        now.getRawWater().getHoses().add(GarboardFactory.eINSTANCE.createWaterHoseRun());
        assertThat(Differences.between(before, now)).hasSize(1);
    }

    @Test
    void knowsUnreadEntriesByTheirPlace() {
        var first = GarboardFactory.eINSTANCE.createUnreadEntry();
        first.setPlace("vessel.beam");
        first.setText("wide");
        var second = GarboardFactory.eINSTANCE.createUnreadEntry();
        second.setPlace("vessel.beam");
        second.setText("very wide");
        before.getUnreadEntries().add(first);
        now.getUnreadEntries().add(second);
        assertThat(Differences.between(before, now)).extracting(one -> one.now().orElseThrow()).containsExactly("very wide");
    }

    @Test
    void seesOtherPictures() {
        for (CommissioningRecord one : List.of(before, now)) {
            var photograph = GarboardFactory.eINSTANCE.createPhotograph();
            photograph.setId("photograph-9");
            photograph.setData(new byte[] { 1, 2 });
            one.getPhotographs().add(photograph);
        }
        assertThat(found()).isEmpty();
        now.getPhotographs().getLast().setData(new byte[] { 1, 3 });
        assertThat(Differences.between(before, now)).hasSize(1);
    }

    @Test
    void takesAnEmptyRecordForNothing() {
        assertThat(Differences.between(RecordFile.create().record(), RecordFile.create().record())).isEmpty();
        assertThat(Differences.between(RecordFile.create().record(), now)).hasSizeGreaterThan(100);
    }
}
