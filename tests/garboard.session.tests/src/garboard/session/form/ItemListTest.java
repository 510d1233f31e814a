// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.checks.Catalogue;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.PipeFitting;
import garboard.model.WaterHoseRun;
import garboard.model.io.RecordFile;
import garboard.session.OpenRecord;

class ItemListTest {

    private final OpenRecord open = OpenRecord.of(RecordFile.of(GarboardFactory.eINSTANCE.createCommissioningRecord()), Optional.empty(),
        Catalogue.of(), Clock.systemUTC());
    private final ItemList hoses = new ItemList(open.edits(), open.record(),
        List.of(Literals.COMMISSIONING_RECORD__RAW_WATER, Literals.RAW_WATER_CIRCUIT__HOSES));
    private WaterHoseRun first;
    private WaterHoseRun second;

    @BeforeEach
    void addTwo() {
        first = add("first");
        second = add("second");
    }

    private WaterHoseRun add(String name) {
        WaterHoseRun hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
        hose.setName(name);
        PipeFitting elbow = GarboardFactory.eINSTANCE.createPipeFitting();
        elbow.setCount(2);
        hose.getFittings().add(elbow);
        return (WaterHoseRun) hoses.add(hose, "Add");
    }

    @Test
    void hasNoItemsBelowAPartThatIsNotThere() {
        var cables = new ItemList(open.edits(), open.record(), List.of(Literals.COMMISSIONING_RECORD__STARTING_BATTERY, Literals.STARTING_BATTERY__CABLES));
        assertThat(cables.items()).isEmpty();
        assertThat(cables.key()).isEqualTo("startingBattery.cables");
    }

    @Test
    void putsACopyWithAllThatBelongsToItBehindTheItem() {
        var copy = (WaterHoseRun) hoses.duplicate(first, "Copy");

        assertThat(hoses.items()).containsExactly(first, copy, second);
        assertThat(copy.getName()).isEqualTo("first");
        assertThat(copy.getFittings()).extracting(PipeFitting::getCount).containsExactly(2);
        assertThat(copy.getId()).isNotNull().isNotIn(first.getId(), second.getId());
        assertThat(copy.getFittings().getFirst().getId()).isNotNull().isNotEqualTo(first.getFittings().getFirst().getId());
        open.edits().undo();
        assertThat(hoses.items()).containsExactly(first, second);
    }

    @Test
    void putsACopyOfTheLastAtTheEnd() {
        EObject copy = hoses.duplicate(second, "Copy");
        assertThat(hoses.items()).containsExactly(first, second, copy);
    }

    @Test
    void movesAnItemOnlyWithinTheList() {
        assertThat(hoses.move(first, 1, "Down")).isTrue();
        assertThat(hoses.items()).containsExactly(second, first);
        assertThat(hoses.move(first, 1, "Down")).isFalse();
        assertThat(hoses.move(second, -1, "Up")).isFalse();
        assertThat(hoses.items()).containsExactly(second, first);
    }

    @Test
    void takesAnItemOutAndBringsItBack() {
        hoses.remove(first, "Out");
        assertThat(hoses.items()).containsExactly(second);
        open.edits().undo();
        assertThat(hoses.items()).containsExactly(first, second);
    }

    @Test
    void isNoListWhenItLeadsToOnePart() {
        assertThatThrownBy(() -> new ItemList(open.edits(), open.record(), List.of(Literals.COMMISSIONING_RECORD__RAW_WATER)))
            .isInstanceOf(IllegalArgumentException.class);
    }
}
