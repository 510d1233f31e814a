// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;

class MetersOnPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "YES, YES, YES, MEETS", "YES, YES, NO, FALLS_SHORT", "NO, YES, YES, FALLS_SHORT" }) // 46 CFR 183.320(c)
    void allThree(Answer voltmeter, Answer ammeter, Answer frequencyMeter, Standing standing) {
        Board.passengers(record);
        record.getAcOutput().setVoltmeter(voltmeter);
        record.getAcOutput().setAmmeter(ammeter);
        record.getAcOutput().setFrequencyMeter(frequencyMeter);
        judge(MetersOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutAnswers() {
        Board.passengers(record);
        judge(MetersOnPassengerVessel.check(), record).cannotTell("acOutput.voltmeter", "acOutput.ammeter", "acOutput.frequencyMeter");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(MetersOnPassengerVessel.check(), record).doesNotApply();
    }
}
