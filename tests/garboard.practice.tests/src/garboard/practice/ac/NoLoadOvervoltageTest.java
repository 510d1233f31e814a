// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Voltage;

class NoLoadOvervoltageTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "253 V, MEETS", "0.2531 kV, FALLS_SHORT", "233 V, MEETS", "260 V, FALLS_SHORT" }) // common practice: 10 % above 230 V
    void atMostTenPerCent(String voltage, Standing standing) {
        record.getGeneratorSet().setRatedVoltage(Voltage.of(230, "V"));
        record.getAcOutput().setNoLoadVoltage(Voltage.valueOf(voltage));
        judge(NoLoadOvervoltage.check(), record).is(standing).limit(253, "V", 1e-9);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(NoLoadOvervoltage.check(), record).cannotTell("acOutput.noLoadVoltage", "generatorSet.ratedVoltage");
    }
}
