// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Frequency;
import garboard.quantity.RotationalSpeed;

class PlateSpeedTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged plate(String speed, String frequency, int poles) {
        record.getGeneratorSet().setRatedSpeed(RotationalSpeed.valueOf(speed));
        record.getGeneratorSet().setRatedFrequency(Frequency.valueOf(frequency));
        record.getGeneratorSet().setPoles(poles);
        return judge(PlateSpeed.check(), record);
    }

    // n = 120 f / p: 4 poles 1500/1800, 2 poles 3000/3600 r/min; within 1 %
    @ParameterizedTest
    @CsvSource({ "1500 r/min, 50 Hz, 4, MEETS", "1800 rpm, 60 Hz, 4, MEETS", "3000 r/min, 50 Hz, 2, MEETS", "3600 r/min, 60 Hz, 2, MEETS",
        "1515 r/min, 50 Hz, 4, MEETS", "1516 r/min, 50 Hz, 4, FALLS_SHORT", "1484 r/min, 50 Hz, 4, FALLS_SHORT", "3600 r/min, 60 Hz, 4, FALLS_SHORT" })
    void belongTogether(String speed, String frequency, int poles, Standing standing) {
        plate(speed, frequency, poles).is(standing);
    }

    @Test
    void remedyIsTheSynchronousSpeed() {
        plate("1800 r/min", "50 Hz", 4).fallsShort().afterRemedy().meets();
        assertThat(record.getGeneratorSet().getRatedSpeed().in("r/min")).isCloseTo(1500, within(1e-9));
    }

    @Test
    void cannotTellWithoutAllThreeOrWithAnOddNumberOfPoles() {
        judge(PlateSpeed.check(), record).cannotTell("generatorSet.ratedSpeed", "generatorSet.ratedFrequency", "generatorSet.poles");
        plate("1500 r/min", "50 Hz", 3).cannotTell();
    }
}
