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
import garboard.practice.testing.Judged;
import garboard.quantity.TimeSpan;

class ResidualTripTimeOfBoatsTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged trips(String time) {
        record.getAcOutput().setResidualCurrentDevice(Answer.YES);
        record.getAcOutput().setResidualTripTime(TimeSpan.valueOf(time));
        return judge(ResidualTripTimeOfBoats.check(), record);
    }

    @ParameterizedTest
    @CsvSource({ "28 ms, MEETS", "100 ms, MEETS", "101 ms, FALLS_SHORT", "260 ms, FALLS_SHORT" }) // ISO 13297 from memory: 100 ms
    void asBoatRulesAsk(String time, Standing standing) {
        trips(time).is(standing).limit(0.1, "s", 1e-9);
    }

    @Test
    void stepsBackWhereTheDeviceIsBeyondItsOwnStandard() {
        trips("301 ms").doesNotApply(); // IEC 61008: 300 ms
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(ResidualTripTimeOfBoats.check(), record).cannotTell("acOutput.residualCurrentDevice", "acOutput.residualTripTime");
    }

    @Test
    void doesNotApplyWithoutADevice() {
        record.getAcOutput().setResidualCurrentDevice(Answer.NO);
        judge(ResidualTripTimeOfBoats.check(), record).doesNotApply();
    }
}
