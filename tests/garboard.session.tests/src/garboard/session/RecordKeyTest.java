// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.HullKind;
import garboard.model.Labels;
import garboard.model.Vessel;

class RecordKeyTest {

    private final CommissioningRecord record = GarboardFactory.eINSTANCE.createCommissioningRecord();
    private final Labels labels = Labels.in(Locale.ENGLISH);

    RecordKeyTest() {
        var water = GarboardFactory.eINSTANCE.createRawWaterCircuit();
        var hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
        hose.setId("hose-1.port");
        water.getHoses().add(hose);
        record.setRawWater(water);
    }

    @Test
    void leadsToAFieldBelowPartsThatDoNotExistYet() {
        Field field = field("generatorSet.makerLimits.maximumHeel").orElseThrow();

        assertThat(field.anchor()).isSameAs(record);
        assertThat(field.path()).containsExactly(Literals.COMMISSIONING_RECORD__GENERATOR_SET, Literals.GENERATOR_SET__MAKER_LIMITS,
            Literals.MAKER_LIMITS__MAXIMUM_HEEL);
        assertThat(field.owner()).isEmpty();
        assertThat(field.value()).isEmpty();
        assertThat(field.key()).isEqualTo("generatorSet.makerLimits.maximumHeel");
    }

    @Test
    void leadsToAFieldOfAnItemWhoseIdHasADot() {
        Field field = field("rawWater.hoses[hose-1.port].bore").orElseThrow();

        assertThat(field.anchor()).isSameAs(record.getRawWater().getHoses().getFirst());
        assertThat(field.key()).isEqualTo("rawWater.hoses[hose-1.port].bore");
    }

    @Test
    void tellsPartsAndListsInWordsThoughTheyAreNoFields() {
        assertThat(RecordKey.of(record, "").orElseThrow().words(labels)).isEqualTo(labels.label(Literals.COMMISSIONING_RECORD));
        assertThat(RecordKey.of(record, "rawWater.hoses").orElseThrow().words(labels)).endsWith(labels.label(Literals.RAW_WATER_CIRCUIT__HOSES));
        assertThat(RecordKey.of(record, "rawWater.hoses[hose-1.port]").orElseThrow().words(labels)).endsWith("hose-1.port");
        assertThat(RecordKey.of(record, "exhaust.muffler").orElseThrow().words(labels)).isEqualTo(labels.label(Literals.COMMISSIONING_RECORD__EXHAUST) + " › "
            + labels.label(Literals.EXHAUST_RUN__MUFFLER));
        assertThat(field("rawWater.hoses")).isEmpty();
        assertThat(field("exhaust.muffler")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "beam", "vessel.", ".vessel", "vessel.beam.x", "vessel.keel", "title.vessel.name", "rawWater.hoses.bore",
        "rawWater.hoses[hose-9].bore", "exhaust.sections[exhaust-1].bore", "rawWater.hoses[hose-1.port.bore", "rawWater..seacock", "inspections[x].photographs"})
    void namesNoField(String key) {
        assertThat(field(key)).isEmpty();
    }

    @Test
    void aChoiceThatStandsAtNotEnteredIsNoValue() {
        Vessel vessel = GarboardFactory.eINSTANCE.createVessel();
        record.setVessel(vessel);
        Field hull = field("vessel.hullKind").orElseThrow();

        assertThat(hull.value()).isEmpty();
        vessel.setHullKind(HullKind.SAILING_MONOHULL);
        assertThat(hull.value()).contains(HullKind.SAILING_MONOHULL);
        assertThat(hull.isPlace(vessel, Literals.VESSEL__HULL_KIND)).isTrue();
        assertThat(hull.isPlace(vessel, Literals.VESSEL__BEAM)).isFalse();
    }

    @Test
    void aFieldNeedsAnAttributeAtTheEndOfAWayOverSingleParts() {
        assertThatThrownBy(() -> Field.of(record, Literals.COMMISSIONING_RECORD__VESSEL)).hasMessageContaining("vessel");
        assertThatThrownBy(() -> Field.of(record.getRawWater(), Literals.RAW_WATER_CIRCUIT__HOSES, Literals.WATER_HOSE_RUN__BORE))
            .hasMessageContaining("hoses");
    }

    private Optional<Field> field(String key) {
        return RecordKey.of(record, key).flatMap(RecordKey::field);
    }
}
