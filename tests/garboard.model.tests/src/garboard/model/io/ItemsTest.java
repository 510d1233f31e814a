// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.model.Acceptance;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.Item;
import garboard.model.RawWaterCircuit;
import garboard.model.WaterHoseRun;
import garboard.model.testing.RecordArbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class ItemsTest {

    private static final GarboardFactory MAKE = GarboardFactory.eINSTANCE;

    private static RecordFile withHoses(int count) {
        RecordFile file = RecordFile.create();
        file.record().setRawWater(MAKE.createRawWaterCircuit());
        for (int i = 0; i < count; i++) {
            addHose(file);
        }
        return file;
    }

    private static WaterHoseRun addHose(RecordFile file) {
        WaterHoseRun hose = MAKE.createWaterHoseRun();
        hoses(file).add(hose);
        return hose;
    }

    private static List<WaterHoseRun> hoses(RecordFile file) {
        return file.record().getRawWater().getHoses();
    }

    private static List<String> ids(RecordFile file) {
        return hoses(file).stream().map(Item::getId).toList();
    }

    @Test
    void givesReadableIds() {
        RecordFile file = withHoses(2);
        file.record().setAcOutput(MAKE.createAcOutput());
        file.record().getAcOutput().setOutputCable(MAKE.createCableRun());
        file.record().getPhotographs().add(MAKE.createPhotograph());

        assertThat(file.items().assign()).isEmpty();

        assertThat(ids(file)).containsExactly("hose-1", "hose-2");
        assertThat(file.record().getAcOutput().getOutputCable().getId()).isEqualTo("cable-1");
        assertThat(file.record().getPhotographs().getFirst().getId()).isEqualTo("photo-1");
    }

    @Test
    void everyClassOfItemsHasAWordOfItsOwn() {
        Set<String> words = new HashSet<>();
        GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
            .filter(type -> !type.isAbstract() && GarboardPackage.Literals.ITEM.isSuperTypeOf(type))
            .forEach(type -> assertThat(words.add(ItemNames.word(type))).as(type.getName()).isTrue());
        assertThat(words).hasSizeGreaterThan(20).allMatch(word -> word.matches("[a-z]+(-[a-z]+)?"));
    }

    @Test
    void readingGivesIdsToo() throws Exception {
        assertThat(ids(RecordXml.read(RecordXml.of("<rawWater><hoses/><hoses id=\"hose-7\"/><hoses/></rawWater>"))))
            .containsExactly("hose-8", "hose-7", "hose-9");
    }

    @Test
    void findsAnItem() {
        RecordFile file = withHoses(2);
        file.items().assign();
        assertThat(file.items().find("hose-2")).containsSame(hoses(file).get(1));
        assertThat(file.items().find("hose-3")).isEmpty();
    }

    @Test
    void anIdIsNotGivenAgainWhileTheRecordIsOpen() {
        RecordFile file = withHoses(2);
        file.items().assign();
        hoses(file).removeLast();
        addHose(file);
        file.items().assign();
        assertThat(ids(file)).containsExactly("hose-1", "hose-3");
    }

    @Test
    void norAfterSavingAndOpening() throws Exception {
        RecordFile file = withHoses(3);
        file.toBytes();
        hoses(file).removeLast();
        hoses(file).removeLast();

        RecordFile again = RecordXml.read(RecordXml.read(file.toBytes()).toBytes());
        addHose(again);
        again.items().assign();

        assertThat(ids(again)).containsExactly("hose-1", "hose-4");
        assertThat(RecordXml.saved(again)).doesNotContain("urn:garboard:ids");
    }

    @Test
    void norOneThatAnAcceptanceSpeaksOf() {
        RecordFile file = withHoses(1);
        Acceptance acceptance = MAKE.createAcceptance();
        acceptance.setSubject("rawWater.hoses[hose-5].bore");
        file.record().getAcceptances().add(acceptance);
        file.items().assign();
        assertThat(ids(file)).containsExactly("hose-6");
    }

    @Test
    void anUndoneDeletionKeepsItsId() {
        RecordFile file = withHoses(2);
        file.items().assign();
        WaterHoseRun deleted = hoses(file).removeLast();
        addHose(file);
        file.items().assign();
        hoses(file).add(deleted);
        file.items().assign();
        assertThat(ids(file)).containsExactly("hose-1", "hose-3", "hose-2");
    }

    @Test
    void replacesIdsThatAreThereTwiceOrCannotBeOnesAndSaysSo() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<rawWater><hoses id=\"a b\"/><hoses id=\"aft\"/><hoses id=\"aft\"/></rawWater>"));
        assertThat(ids(file)).containsExactly("hose-1", "aft", "hose-2");
        assertThat(file.notes()).containsExactly("\"a b\" cannot be an id; the item is now hose-1",
            "The id \"aft\" was given to two items; the second is now hose-2");
    }

    @ParameterizedTest
    @ValueSource(strings = { "hose-1", "aft", "Größe.2_b", "漢字" })
    void takesIdsThatPeopleThinkOf(String id) {
        assertThat(Items.isId(id)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "1", "a b", "a#b", "a:b", "a]", "a/b", "-a", "a\n" })
    void refusesIdsThatReferencesAndKeysCannotHold(String id) {
        assertThat(Items.isId(id)).isFalse();
    }

    @Test
    void aWatchGivesIdsToWhatIsAdded() {
        RecordFile file = withHoses(1);
        try (Items.Watch watch = file.items().watch()) {
            assertThat(watch).isNotNull();
            WaterHoseRun hose = addHose(file);
            assertThat(hose.getId()).isEqualTo("hose-1");
            hose.getFittings().add(MAKE.createPipeFitting());
            assertThat(hose.getFittings().getFirst().getId()).isEqualTo("fitting-1");

            WaterHoseRun copy = EcoreUtil.copy(hose);
            hoses(file).addFirst(copy);
            assertThat(copy.getId()).isEqualTo("hose-2");
            assertThat(copy.getFittings().getFirst().getId()).isEqualTo("fitting-2");
            assertThat(hose.getId()).isEqualTo("hose-1");

            hoses(file).remove(hose);
            hoses(file).add(hose);
            assertThat(hose.getId()).isEqualTo("hose-1");

            RawWaterCircuit circuit = MAKE.createRawWaterCircuit();
            circuit.getHoses().add(MAKE.createWaterHoseRun());
            file.record().setRawWater(circuit);
            assertThat(circuit.getHoses().getFirst().getId()).isEqualTo("hose-3");
        }
        assertThat(addHose(file).getId()).isNull();
    }

    @Provide
    Arbitrary<CommissioningRecord> records() {
        return RecordArbitraries.records();
    }

    @Property(tries = 50)
    void idsAreUniqueInTheRecordAndKeptOnceGiven(@ForAll("records") CommissioningRecord record) {
        Items items = Items.of(record);
        List<String> before = items.all().stream().map(Item::getId).toList();
        assertThat(items.assign()).isEmpty();
        List<String> after = items.all().stream().map(Item::getId).toList();

        assertThat(after).doesNotHaveDuplicates().allMatch(Items::isId);
        for (int i = 0; i < before.size(); i++) {
            if (before.get(i) != null) {
                assertThat(after.get(i)).isEqualTo(before.get(i));
            }
        }
        items.assign();
        assertThat(items.all().stream().map(Item::getId)).isEqualTo(after);
    }
}
