// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;

import garboard.model.GarboardPackage.Literals;
import garboard.session.Stop;

class FormTest {

    private final Form form = Form.read();

    private static String key(List<? extends EStructuralFeature> path) {
        return String.join(".", path.stream().map(EStructuralFeature::getName).toList());
    }

    /** Straight from the model, by another way than the form takes. */
    private static void expected(EClass type, String above, List<String> fields, List<EReference> lists) {
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            String key = above + feature.getName();
            if (!Form.isByHand(feature)) {
                continue;
            }
            if (feature instanceof EAttribute) {
                fields.add(key);
            } else if (feature.isMany()) {
                fields.add(key);
                lists.add((EReference) feature);
            } else {
                expected(((EReference) feature).getEReferenceType(), key + ".", fields, lists);
            }
        }
    }

    private static List<String> shown(List<FormGroup> groups) {
        var keys = new ArrayList<String>();
        groups.forEach(group -> group.entries().forEach(entry -> entry.paths().forEach(path -> keys.add(key(path)))));
        return keys;
    }

    @Test
    void showsEveryFieldOfTheRecordOnExactlyOnePage() {
        var fields = new ArrayList<String>();
        expected(Literals.COMMISSIONING_RECORD, "", fields, new ArrayList<>());
        var shown = new ArrayList<String>();
        for (Stop stop : Stop.values()) {
            shown.addAll(shown(form.at(stop)));
        }
        assertThat(shown).containsExactlyInAnyOrderElementsOf(fields);
    }

    @Test
    void showsAFieldAtTheStopWhereItsKeyLeads() {
        for (Stop stop : Stop.values()) {
            for (String key : shown(form.at(stop))) {
                if (!key.startsWith("trial.") && !key.equals("acceptances")) {
                    assertThat(Stop.of(key)).as(key).isEqualTo(stop);
                }
            }
        }
    }

    @Test
    void showsEveryFieldOfEveryItemOnceAndAllListsBelowIt() {
        var lists = new ArrayList<EReference>();
        expected(Literals.COMMISSIONING_RECORD, "", new ArrayList<>(), lists);
        for (int next = 0; next < lists.size(); next++) {
            EClass type = lists.get(next).getEReferenceType();
            var fields = new ArrayList<String>();
            expected(type, "", fields, lists);
            ItemForm items = form.of(type);
            List<String> told = items.groups().isEmpty() ? items.columns().stream().map(FormTest::key).toList() : shown(items.groups());
            if (items.groups().stream().anyMatch(group -> !group.id().equals(FormGroup.OTHERS)) || items.groups().isEmpty()) {
                assertThat(told).as(type.getName()).containsExactlyInAnyOrderElementsOf(fields);
            } else {
                var all = new ArrayList<>(told);
                items.columns().forEach(column -> all.add(key(column)));
                assertThat(all).as(type.getName()).containsExactlyInAnyOrderElementsOf(fields);
            }
        }
    }

    @Test
    void needsNoLastGroupToday() {
        for (Stop stop : Stop.values()) {
            assertThat(form.at(stop)).as(stop.name()).extracting(FormGroup::id).doesNotContain(FormGroup.OTHERS);
        }
    }

    @Test
    void putsWhatIsNotNamedInALastGroup() {
        var named = new HashMap<Stop, List<FormGroup>>();
        named.put(Stop.VESSEL, List.of(new FormGroup("boat", java.util.Optional.empty(), false,
            List.of(new FormEntry.One(List.of(Literals.COMMISSIONING_RECORD__VESSEL, Literals.VESSEL__NAME))))));
        var sparse = new Form(named, Map.of());

        assertThat(sparse.at(Stop.VESSEL)).extracting(FormGroup::id).containsExactly("boat", FormGroup.OTHERS);
        assertThat(shown(sparse.at(Stop.VESSEL))).contains("vessel.beam").containsOnlyOnce("vessel.name");
        assertThat(shown(sparse.at(Stop.RAW_WATER))).contains("rawWater.siphonBreak.ventSeat.z", "rawWater.hoses");
        assertThat(sparse.of(Literals.CABLE_RUN).columns()).extracting(FormTest::key).contains("conductorSize");
    }

    @Test
    void takesTheThreeFiguresOfAPlaceTogether() {
        assertThat(form.at(Stop.RAW_WATER).getFirst().entries()).filteredOn(FormEntry.Place.class::isInstance).extracting(entry -> shown(List.of(
            new FormGroup("", java.util.Optional.empty(), false, List.of(entry)))))
            .contains(List.of("rawWater.pickUp.position.x", "rawWater.pickUp.position.y", "rawWater.pickUp.position.z"));
    }

    @Test
    void showsTheNestedListsOfAnItem() {
        assertThat(shown(form.of(Literals.WATER_HOSE_RUN).groups())).contains("fittings");
        assertThat(shown(form.of(Literals.EXHAUST_SECTION_RUN).groups())).contains("bends");
        assertThat(shown(form.of(Literals.LOAD_STEP).groups())).contains("readings");
        assertThat(form.of(Literals.READING).columns()).hasSizeGreaterThan(20);
    }

    @Test
    void letsNobodyChangeIt() {
        assertThatThrownBy(() -> form.at(Stop.VESSEL).clear()).isInstanceOf(UnsupportedOperationException.class);
    }
}
