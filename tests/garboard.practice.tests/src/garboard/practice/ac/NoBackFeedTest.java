// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Voltage;

class NoBackFeedTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "0 V, MEETS", "1 V, MEETS", "1000 mV, MEETS", "1.1 V, FALLS_SHORT", "118 V, FALLS_SHORT", "1 V ±0.5 V, BORDERLINE" }) // common practice
    void deadInlet(String voltage, Standing standing) {
        record.getAcOutput().getTransfer().setBackFeedVoltage(Voltage.valueOf(voltage));
        judge(NoBackFeed.check(), record).is(standing).limit(1, "V", 1e-9);
    }

    @Test
    void cannotTellWithoutTheReading() {
        judge(NoBackFeed.check(), record).cannotTell("acOutput.transfer.backFeedVoltage");
    }

    @Test
    void doesNotApplyWithoutAShoreInlet() {
        record.getAcOutput().setShoreInletResidualDevice(Answer.NOT_APPLICABLE);
        judge(NoBackFeed.check(), record).doesNotApply();
    }
}
