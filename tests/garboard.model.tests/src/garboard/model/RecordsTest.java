// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import garboard.model.testing.RecordArbitraries;
import garboard.quantity.Length;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class RecordsTest {

    private static final GarboardFactory MAKE = GarboardFactory.eINSTANCE;

    private static CommissioningRecord withBeam(String beam) {
        CommissioningRecord record = MAKE.createCommissioningRecord();
        record.setVessel(MAKE.createVessel());
        record.getVessel().setBeam(Length.valueOf(beam));
        return record;
    }

    @Test
    void quantitiesCompareAsGiven() {
        assertThat(Records.equal(withBeam("1 in"), withBeam("1 in"))).isTrue();
        assertThat(Records.firstDifference(withBeam("1 in"), withBeam("25.4 mm"))).contains("vessel.beam: 1 in against 25.4 mm");
        assertThat(Records.firstDifference(withBeam("1 in"), withBeam("1.0 in"))).contains("vessel.beam: 1 in against 1.0 in");
        assertThat(Records.firstDifference(withBeam("1 in"), withBeam("1 in ±1 mm"))).contains("vessel.beam: 1 in against 1 in ±1 mm");
    }

    @Test
    void tellsWhatIsMissingAndHowManyThereAre() {
        CommissioningRecord one = withBeam("1 m");
        CommissioningRecord other = MAKE.createCommissioningRecord();
        assertThat(Records.firstDifference(other, one).orElseThrow()).startsWith("vessel: nothing entered against ");
        one.getPhotographs().add(MAKE.createPhotograph());
        other.setVessel(EcoreUtil.copy(one.getVessel()));
        other.getPhotographs().add(MAKE.createPhotograph());
        other.getPhotographs().add(MAKE.createPhotograph());
        assertThat(Records.firstDifference(one, other)).contains("photographs: 1 of them against 2 of them");
    }

    @Test
    void picturesCompareByteForByte() {
        Photograph one = MAKE.createPhotograph();
        Photograph other = MAKE.createPhotograph();
        one.setData(new byte[] { 1, 2 });
        other.setData(new byte[] { 1, 2 });
        assertThat(Records.equal(one, other)).isTrue();
        other.setData(new byte[] { 1, 3 });
        assertThat(Records.firstDifference(one, other).orElseThrow()).startsWith("data: 2 bytes");
    }

    @Test
    void referencesCompareByWhereTheyLead() {
        CommissioningRecord one = MAKE.createCommissioningRecord();
        one.getPhotographs().add(MAKE.createPhotograph());
        one.getPhotographs().add(MAKE.createPhotograph());
        one.getInspections().add(MAKE.createInspectionAnswer());
        one.getInspections().getFirst().getPhotographs().add(one.getPhotographs().get(0));
        CommissioningRecord other = EcoreUtil.copy(one);
        assertThat(Records.equal(one, other)).isTrue();
        other.getInspections().getFirst().getPhotographs().set(0, other.getPhotographs().get(1));
        assertThat(Records.firstDifference(one, other)).contains("inspections[0].photographs: photographs[0] against photographs[1]");
    }

    @Test
    void partsOfDifferentClassesDiffer() {
        assertThat(Records.firstDifference(MAKE.createVessel(), MAKE.createMuffler())).contains("the record: Vessel against Muffler");
    }

    @Provide
    Arbitrary<CommissioningRecord> records() {
        return RecordArbitraries.records();
    }

    @Property(tries = 50)
    void aCopyIsEqual(@ForAll("records") CommissioningRecord record) {
        assertThat(Records.firstDifference(record, EcoreUtil.copy(record))).isEmpty();
    }

    @Property(tries = 100)
    void oneChangeAnywhereIsFoundThere(@ForAll("records") CommissioningRecord record, @ForAll long seed) {
        CommissioningRecord changed = EcoreUtil.copy(record);
        List<EObject> parts = new ArrayList<>(List.of(changed));
        changed.eAllContents().forEachRemaining(parts::add);
        Random random = new Random(seed);
        EObject part = parts.get(random.nextInt(parts.size()));
        List<EStructuralFeature> entered = part.eClass().getEAllStructuralFeatures().stream().filter(part::eIsSet)
            .filter(EAttribute.class::isInstance).filter(feature -> feature != GarboardPackage.Literals.ITEM__ID).toList();
        if (!entered.isEmpty()) {
            EStructuralFeature feature = entered.get(random.nextInt(entered.size()));
            String place = RecordPath.key(part, feature);
            part.eUnset(feature);
            assertThat(Records.firstDifference(record, changed).orElseThrow()).startsWith(place + ": ").endsWith(" against nothing entered");
            assertThat(Records.firstDifference(changed, record).orElseThrow()).startsWith(place + ": nothing entered against ");
        }
    }
}
