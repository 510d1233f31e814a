// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.model.GarboardPackage.Literals;
import garboard.model.RecordPath.Place;
import garboard.model.io.Items;
import garboard.model.testing.RecordArbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class RecordPathTest {

    private static final GarboardFactory MAKE = GarboardFactory.eINSTANCE;
    private final Labels labels = Labels.in(Locale.ENGLISH);
    private final CommissioningRecord record = MAKE.createCommissioningRecord();
    private final WaterHoseRun hose = MAKE.createWaterHoseRun();
    private final WaterHoseRun nameless = MAKE.createWaterHoseRun();

    @BeforeEach
    void layHoses() {
        record.setRawWater(MAKE.createRawWaterCircuit());
        hose.setId("hose-2");
        record.getRawWater().getHoses().add(hose);
        record.getRawWater().getHoses().add(nameless);
    }

    @Test
    void writesKeys() {
        assertThat(RecordPath.key(hose, Literals.WATER_HOSE_RUN__BORE)).isEqualTo("rawWater.hoses[hose-2].bore");
        assertThat(RecordPath.key(hose)).isEqualTo("rawWater.hoses[hose-2]");
        assertThat(RecordPath.key(nameless)).isEqualTo("rawWater.hoses[1]");
        assertThat(RecordPath.key(record)).isEmpty();
        assertThat(RecordPath.key(record, Literals.COMMISSIONING_RECORD__TITLE)).isEqualTo("title");
        assertThat(RecordPath.key(record.getRawWater(),
            List.of(Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK, Literals.SIPHON_BREAK__VENT_SEAT, Literals.POINT__Z)))
            .isEqualTo("rawWater.siphonBreak.ventSeat.z");
    }

    @Test
    void keepsTheKeyOfAnItemWhenOthersComeAndGo() {
        record.getRawWater().getHoses().addFirst(MAKE.createWaterHoseRun());
        assertThat(RecordPath.key(hose)).isEqualTo("rawWater.hoses[hose-2]");
    }

    @Test
    void readsKeys() {
        assertThat(RecordPath.resolve(record, "rawWater.hoses[hose-2].bore")).contains(new Place(hose, Literals.WATER_HOSE_RUN__BORE));
        assertThat(RecordPath.resolve(record, "rawWater.hoses[1].bore")).contains(new Place(nameless, Literals.WATER_HOSE_RUN__BORE));
        assertThat(RecordPath.resolve(record, "rawWater.hoses"))
            .contains(new Place(record.getRawWater(), Literals.RAW_WATER_CIRCUIT__HOSES));
        assertThat(RecordPath.resolve(record, "title")).contains(new Place(record, Literals.COMMISSIONING_RECORD__TITLE));
        assertThat(RecordPath.part(record, "rawWater.hoses[hose-2]")).containsSame(hose);
        assertThat(RecordPath.part(record, "rawWater")).containsSame(record.getRawWater());
        assertThat(RecordPath.part(record, "")).containsSame(record);
    }

    @ParameterizedTest
    @ValueSource(strings = { "", ".", "rawWater.", ".rawWater", "rawWater..bore", "rawWater.hoses[hose-2]", "rawWater.hoses.bore",
        "rawWater.hoses[hose-9].bore", "rawWater.hoses[7].bore", "rawWater.hoses[99999999999].bore", "rawWater.hoses[].bore", "rawWater.hoses[a.bore",
        "rawWater.hoses[[a]].bore", "rawWater[1].ownIntake", "rawWater.nothing", "title.title", "title[0]", "vessel.name", "raw water",
        "rawWater\n" })
    void resolvesNothingElse(String key) {
        assertThat(RecordPath.resolve(record, key)).isEmpty();
        assertThat(record.getVessel()).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = { "rawWater.hoses", "rawWater.hoses[3]", "rawWater.siphonBreak", "title", "rawWater.ownIntake", "rawWater.", "x" })
    void findsNoPartElsewhere(String key) {
        assertThat(RecordPath.part(record, key)).isEmpty();
    }

    @Test
    void reachesAFieldByCreatingSinglePartsOnTheWay() {
        Place place = RecordPath.reach(record, "rawWater.siphonBreak.ventSeat.z").orElseThrow();
        assertThat(place.owner()).isSameAs(record.getRawWater().getSiphonBreak().getVentSeat());
        assertThat(place.feature()).isSameAs(Literals.POINT__Z);
        assertThat(RecordPath.reach(record, "rawWater.siphonBreak.ventSeat.z")).contains(place);
    }

    @ParameterizedTest
    @ValueSource(strings = { "trial.loadSteps[load-step-1].dwell", "trial.nothing", "vessel.name.x", "trial.loadSteps.dwell", "vessel." })
    void createsNothingWhenItCannotReach(String key) {
        assertThat(RecordPath.reach(record, key)).isEmpty();
        assertThat(record.getTrial()).isNull();
        assertThat(record.getVessel()).isNull();
    }

    @Test
    void tellsPlacesInWords() {
        assertThat(RecordPath.words(hose, labels)).isEqualTo("Raw-water circuit › Hoses › hose-2");
        assertThat(RecordPath.words(hose, Literals.WATER_HOSE_RUN__BORE, labels)).isEqualTo("Raw-water circuit › Hoses › hose-2 › Bore");
        assertThat(RecordPath.words(nameless, labels)).isEqualTo("Raw-water circuit › Hoses › Raw-water hose 2");
        hose.setName("strainer to pump");
        assertThat(RecordPath.words(hose, labels)).isEqualTo("Raw-water circuit › Hoses › hose-2 (strainer to pump)");
        assertThat(RecordPath.words(record, labels)).isEqualTo("Commissioning record");
        assertThat(RecordPath.words(record, Literals.COMMISSIONING_RECORD__TITLE, labels)).isEqualTo("Title");
        assertThat(RecordPath.words(record.getRawWater(),
            List.of(Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK, Literals.SIPHON_BREAK__VENT_SEAT), labels))
            .isEqualTo("Raw-water circuit › Siphon break › Vent seat");
    }

    @Provide
    Arbitrary<CommissioningRecord> records() {
        return RecordArbitraries.records();
    }

    @Property(tries = 40)
    void everyKeyLeadsBack(@ForAll("records") CommissioningRecord any, @ForAll boolean withIds) {
        if (withIds) {
            Items.of(any).assign();
        }
        any.eAllContents().forEachRemaining(part -> {
            assertThat(RecordPath.part(any, RecordPath.key(part))).containsSame(part);
            for (EStructuralFeature feature : part.eClass().getEAllStructuralFeatures()) {
                assertThat(RecordPath.resolve(any, RecordPath.key(part, feature))).contains(new Place((EObject) part, feature));
            }
        });
    }
}
