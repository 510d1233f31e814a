// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.model.ElectricalLoad;
import garboard.model.GarboardFactory;
import garboard.model.PhaseSystem;

class PhasesTest {

    private static Phases phases(String written, PhaseSystem set) {
        ElectricalLoad load = GarboardFactory.eINSTANCE.createElectricalLoad();
        load.setPhase(written);
        return Phases.of(load, set);
    }

    @ParameterizedTest
    @CsvSource({ "L1, 1, 0, 0", "l2, 0, 1, 0", "3, 0, 0, 1", "A, 1, 0, 0", "b, 0, 1, 0", "C, 0, 0, 1", "R, 1, 0, 0", "S, 0, 1, 0", "T, 0, 0, 1",
        "U, 1, 0, 0", "W, 0, 0, 1", "L1-N, 1, 0, 0", "L1-L2, 0.5, 0.5, 0" })
    void ofThreePhases(String written, double onFirst, double onSecond, double onThird) {
        Phases phases = phases(written, PhaseSystem.THREE_PHASE);
        assertThat(List.of(phases.shareOn(0), phases.shareOn(1), phases.shareOn(2))).containsExactly(onFirst, onSecond, onThird);
        assertThat(phases.areThree()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = { "L1-L2-L3", "A B C", "1+2+3", "all", "" })
    void onAllAlike(String written) {
        assertThat(phases(written, PhaseSystem.THREE_PHASE).areThree()).isTrue();
        assertThat(phases(written, PhaseSystem.THREE_PHASE).partOfTheSet()).isEqualTo(1);
    }

    @Test
    void ofTwoLegsAndOfOnePhase() {
        assertThat(phases("B", PhaseSystem.SPLIT_PHASE).shareOn(1)).isEqualTo(1);
        assertThat(phases("B", PhaseSystem.SPLIT_PHASE).partOfTheSet()).isEqualTo(0.5);
        assertThat(phases(null, PhaseSystem.SPLIT_PHASE).shareOn(0)).isEqualTo(0.5);
        assertThat(phases("L3", PhaseSystem.SINGLE_PHASE).shareOn(0)).isEqualTo(1);
        assertThat(phases("L1", PhaseSystem.SINGLE_PHASE).partOfTheSet()).isEqualTo(1);
    }
}
