// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.practice.testing.Installation;
import garboard.quantity.Voltage;

class OutputDropMeasuredTest {

    private final CommissioningRecord record = Board.set("9.2 kVA", "230 V", PhaseSystem.SINGLE_PHASE);

    @ParameterizedTest
    @CsvSource({ "6.9 V, MEETS", "6900 mV, MEETS", "7 V, FALLS_SHORT", "0.8 V, MEETS", "6.8 V ±0.2 V, BORDERLINE" }) // common practice: 3 % of 230 V
    void atMostThreePerCent(String drop, Standing standing) {
        record.getAcOutput().getOutputCable().setMeasuredDrop(Voltage.valueOf(drop));
        judge(OutputDropMeasured.check(), record).is(standing).limit(6.9, "V", 1e-9);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(OutputDropMeasured.check(), Installation.empty()).cannotTell("acOutput.outputCable.measuredDrop", "generatorSet.ratedVoltage");
    }
}
