// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;

class MetersInAnyBoatTest {

    private final CommissioningRecord record = Installation.empty();

    // 46 CFR 183.320(c) as a yardstick: voltmeter, ammeter and frequency
    @ParameterizedTest
    @CsvSource({ "YES, YES, YES, MEETS", "NO, YES, YES, FALLS_SHORT", "YES, NO, YES, FALLS_SHORT", "YES, YES, NO, FALLS_SHORT",
        "YES, YES, NOT_APPLICABLE, FALLS_SHORT" })
    void allThree(Answer voltmeter, Answer ammeter, Answer frequencyMeter, Standing standing) {
        record.getAcOutput().setVoltmeter(voltmeter);
        record.getAcOutput().setAmmeter(ammeter);
        record.getAcOutput().setFrequencyMeter(frequencyMeter);
        judge(MetersInAnyBoat.check(), record).is(standing);
    }

    @Test
    void namesWhatIsLacking() {
        allThree(Answer.YES, Answer.NO, Answer.NO, Standing.FALLS_SHORT);
        assertThat(judge(MetersInAnyBoat.check(), record).verdict().sentence()).isEqualTo("lacking: ammeter, frequency meter");
    }

    @Test
    void cannotTellWithoutAnswers() {
        judge(MetersInAnyBoat.check(), record).cannotTell("acOutput.voltmeter", "acOutput.ammeter", "acOutput.frequencyMeter");
    }

    @Test
    void doesNotApplyWhereTheLawSpeaks() {
        Board.passengers(record);
        judge(MetersInAnyBoat.check(), record).doesNotApply();
    }
}
