// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;

import org.junit.jupiter.api.Test;

import garboard.report.drawing.View;
import garboard.session.Stop;

class ViewMemoryTest {

    @Test
    void drawingsHelpWhereSomethingHasAPlaceOnTheBoat() {
        assertThat(Arrays.stream(Stop.values()).filter(ViewMemory::helpsAt)).containsExactly(Stop.VESSEL, Stop.FUEL, Stop.RAW_WATER, Stop.EXHAUST);
    }

    @Test
    void remembersWhatWasChosenAtEachStop() {
        var memory = new ViewMemory();
        assertThat(memory.at(Stop.EXHAUST)).isEqualTo(View.RUNS);
        memory.choose(Stop.EXHAUST, View.CLEARANCE);
        assertThat(memory.at(Stop.EXHAUST)).isEqualTo(View.CLEARANCE);
        assertThat(memory.at(Stop.FUEL)).isEqualTo(View.SIDE);
        var next = new ViewMemory();
        next.read(memory.written());
        assertThat(next.at(Stop.EXHAUST)).isEqualTo(View.CLEARANCE);
    }

    @Test
    void takesNoHarmFromWhatItDoesNotKnow() {
        var memory = new ViewMemory();
        memory.read("EXHAUST=PERISCOPE;CELLAR=SIDE;;=;FUEL=CROSS");
        assertThat(memory.at(Stop.EXHAUST)).isEqualTo(View.RUNS);
        assertThat(memory.at(Stop.FUEL)).isEqualTo(View.CROSS);
    }
}
