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
import garboard.quantity.TimeSpan;

class ResidualTripTimeTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "260 ms, MEETS", "300 ms, MEETS", "0.3 s, MEETS", "301 ms, FALLS_SHORT" }) // IEC 61008/61009 as quoted: 300 ms at the rated residual current
    void withinTheStandardOfTheDevice(String time, Standing standing) {
        record.getAcOutput().setResidualCurrentDevice(Answer.YES);
        record.getAcOutput().setResidualTripTime(TimeSpan.valueOf(time));
        judge(ResidualTripTime.check(), record).is(standing).limit(0.3, "s", 1e-9);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(ResidualTripTime.check(), record).cannotTell("acOutput.residualCurrentDevice", "acOutput.residualTripTime");
    }

    @Test
    void doesNotApplyWithoutADevice() {
        record.getAcOutput().setResidualCurrentDevice(Answer.NO);
        judge(ResidualTripTime.check(), record).doesNotApply();
    }
}
