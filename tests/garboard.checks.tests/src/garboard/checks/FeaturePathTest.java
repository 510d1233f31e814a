// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_SEAT;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CABLES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;

import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.GarboardFactory;
import garboard.model.StartingBattery;
import garboard.quantity.Length;

class FeaturePathTest {

    private static List<String> ends(FeaturePath path, EObject start) {
        var ends = new ArrayList<String>();
        path.walk(start, new FeaturePath.Visitor() {
            @Override
            public void entered(EObject owner, EStructuralFeature feature) {
                ends.add("entered " + feature.getName());
            }

            @Override
            public void missing(EObject owner, List<EStructuralFeature> rest) {
                ends.add("missing " + rest.stream().map(EStructuralFeature::getName).toList());
            }
        });
        return ends;
    }

    @Test
    void refusesAFeatureThatDoesNotFollow() {
        assertThatThrownBy(() -> path(SIPHON_BREAK__VENT_SEAT, CABLE_RUN__LENGTH)).hasMessageContaining("length")
                .hasMessageContaining("Point");
    }

    @Test
    void tellsWhereItBreaksOff() {
        assertThat(ends(path(SIPHON_BREAK__VENT_SEAT, POINT__Z), GarboardFactory.eINSTANCE.createSiphonBreak()))
                .containsExactly("missing [ventSeat, z]");
    }

    @Test
    void visitsEachElementOfAList() {
        StartingBattery battery = GarboardFactory.eINSTANCE.createStartingBattery();
        FeaturePath path = path(STARTING_BATTERY__CABLES, CABLE_RUN__LENGTH);
        assertThat(ends(path, battery)).containsExactly("missing [cables, length]");
        CableRun measured = GarboardFactory.eINSTANCE.createCableRun();
        measured.setLength(Length.of(2, "m"));
        battery.getCables().add(measured);
        battery.getCables().add(GarboardFactory.eINSTANCE.createCableRun());
        assertThat(ends(path, battery)).containsExactly("entered length", "missing [length]");
    }

    @Test
    void visitsOnlyTheChosenElementsAndMissesThemWhenThereAreNone() {
        StartingBattery battery = GarboardFactory.eINSTANCE.createStartingBattery();
        battery.getCables().add(GarboardFactory.eINSTANCE.createCableRun());
        FeaturePath path = path(STARTING_BATTERY__CABLES)
                .where(CableRun.class, cable -> cable.getFunction() == CableFunction.CRANKING_POSITIVE).then(CABLE_RUN__LENGTH);
        assertThat(ends(path, battery)).containsExactly("missing [cables, length]");
        battery.getCables().getFirst().setFunction(CableFunction.CRANKING_POSITIVE);
        battery.getCables().getFirst().setLength(Length.of(2, "m"));
        assertThat(ends(path, battery)).containsExactly("entered length");
    }
}
