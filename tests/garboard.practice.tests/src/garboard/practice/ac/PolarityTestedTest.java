// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.TestResult;
import garboard.practice.testing.Installation;

class PolarityTestedTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "PASSED, MEETS", "FAILED, FALLS_SHORT", "NOT_TESTED, FALLS_SHORT" }) // common practice
    void tested(TestResult result, Standing standing) {
        record.getAcOutput().setPolarityTested(result);
        judge(PolarityTested.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheResult() {
        judge(PolarityTested.check(), record).cannotTell("acOutput.polarityTested");
    }
}
