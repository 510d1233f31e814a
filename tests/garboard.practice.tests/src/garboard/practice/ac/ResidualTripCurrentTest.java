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
import garboard.quantity.Current;

class ResidualTripCurrentTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "30 mA, MEETS", "0.03 A, MEETS", "22 mA, MEETS", "31 mA, FALLS_SHORT", "100 mA, FALLS_SHORT" }) // ISO 13297 from memory: 30 mA
    void atThirtyMilliamperes(String current, Standing standing) {
        record.getAcOutput().setResidualCurrentDevice(Answer.YES);
        record.getAcOutput().setResidualTripCurrent(Current.valueOf(current));
        judge(ResidualTripCurrent.check(), record).is(standing).limit(30, "mA", 1e-9);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(ResidualTripCurrent.check(), record).cannotTell("acOutput.residualCurrentDevice", "acOutput.residualTripCurrent");
    }

    @Test
    void doesNotApplyWithoutADevice() {
        record.getAcOutput().setResidualCurrentDevice(Answer.NO);
        judge(ResidualTripCurrent.check(), record).doesNotApply();
    }
}
