// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.TestResult;
import garboard.practice.testing.Installation;

class SelectorTestedTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "PASSED, MEETS", "FAILED, FALLS_SHORT", "NOT_TESTED, FALLS_SHORT" }) // common practice
    void tried(TestResult result, Standing standing) {
        record.getAcOutput().getTransfer().setTested(result);
        judge(SelectorTested.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheResult() {
        judge(SelectorTested.check(), record).cannotTell("acOutput.transfer.tested");
    }

    @Test
    void doesNotApplyWithoutAShoreInlet() {
        record.getAcOutput().setShoreInletResidualDevice(Answer.NOT_APPLICABLE);
        judge(SelectorTested.check(), record).doesNotApply();
    }
}
