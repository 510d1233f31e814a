// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PerformanceClass;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Frequency;

class NoLoadFrequencyTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged noLoad(String frequency, String rated, PerformanceClass declared) {
        record.getGeneratorSet().setRatedFrequency(Frequency.valueOf(rated));
        record.getGeneratorSet().setPerformanceClass(declared);
        record.getAcOutput().setNoLoadFrequency(Frequency.valueOf(frequency));
        return judge(NoLoadFrequency.check(), record);
    }

    // DGUV Information 203-032 annex 5, 50 Hz: G1 54.0, G2 52.5, G3 51.5 Hz; 60 x 1.08 = 64.8 Hz
    @ParameterizedTest
    @CsvSource({ "54.0 Hz, 50 Hz, G1, 54.0, MEETS", "54.1 Hz, 50 Hz, G1, 54.0, FALLS_SHORT", "52.5 Hz, 50 Hz, G2, 52.5, MEETS",
        "52.6 Hz, 50 Hz, G2, 52.5, FALLS_SHORT", "51.5 Hz, 50 Hz, G3, 51.5, MEETS", "51.6 Hz, 50 Hz, G3, 51.5, FALLS_SHORT",
        "64.8 Hz, 60 Hz, G1, 64.8, MEETS", "64.9 Hz, 60 Hz, G1, 64.8, FALLS_SHORT" })
    void byTheClass(String frequency, String rated, PerformanceClass declared, double mostHz, Standing standing) {
        noLoad(frequency, rated, declared).is(standing).limit(mostHz, "Hz", 1e-9);
    }

    @Test
    void isBorderlineWithinTheAccuracyOfTheMeter() {
        noLoad("52.45 Hz ±0.1 Hz", "50 Hz", PerformanceClass.G2).is(Standing.BORDERLINE);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(NoLoadFrequency.check(), record).cannotTell("generatorSet.performanceClass", "acOutput.noLoadFrequency", "generatorSet.ratedFrequency");
    }

    @Test
    void doesNotApplyToClassG4() {
        noLoad("60 Hz", "50 Hz", PerformanceClass.G4).doesNotApply();
    }
}
