// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;

class ConductorSizeReadableTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @ParameterizedTest
    @CsvSource({ "10 AWG, MEETS", "2/0 AWG, MEETS", "AWG 4, MEETS", "70 mm2, MEETS", "350 kcmil, MEETS", "70, FALLS_SHORT", "thick, FALLS_SHORT" })
    void hasItsUnit(String size, Standing standing) { // common practice
        run.setConductorSize(size);
        judge(ConductorSizeReadable.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutASize() {
        judge(ConductorSizeReadable.check(), record).cannotTell("startingBattery.cables[0].conductorSize");
    }
}
