// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.quantity.Voltage;

class DropMeasuredTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    // ABYC E-11 (quoted): 3 % and 10 % of the nominal voltage
    @ParameterizedTest
    @CsvSource({ "12 V, YES, 0.36 V, MEETS", "12 V, YES, 0.37 V, FALLS_SHORT", "24 V, YES, 720 mV, MEETS", "24 V, YES, 0.73 V, FALLS_SHORT",
        "12 V, NO, 1.2 V, MEETS", "24 V, NO, 2.5 V, FALLS_SHORT" })
    void underItsLoad(String system, Answer critical, String drop, Standing standing) {
        CableRun run = Wiring.add(record, CableFunction.OTHER_DC);
        run.setSystemVoltage(Voltage.valueOf(system));
        run.setCritical(critical);
        run.setMeasuredDrop(Voltage.valueOf(drop));
        judge(DropMeasured.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheReading() {
        CableRun run = Wiring.add(record, CableFunction.CONTROL);
        run.setSystemVoltage(Voltage.of(12, "V"));
        judge(DropMeasured.check(), record).cannotTell("startingBattery.cables[0].measuredDrop");
    }

    @Test
    void doesNotApplyToBonding() {
        Wiring.add(record, CableFunction.BONDING);
        judge(DropMeasured.check(), record).doesNotApply();
    }
}
