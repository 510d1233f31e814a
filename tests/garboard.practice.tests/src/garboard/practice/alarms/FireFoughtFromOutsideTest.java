// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;

class FireFoughtFromOutsideTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "YES, UNANSWERED, MEETS", "YES, NOT_APPLICABLE, MEETS", "NO, YES, MEETS", "NO, NO, FALLS_SHORT", "NOT_APPLICABLE, NO, FALLS_SHORT",
        "NO, NOT_APPLICABLE, DOES_NOT_APPLY" })
    void systemOrPort(Answer fixed, Answer port, Standing standing) { // common practice
        record.getAlarms().setFixedFireSystem(fixed);
        record.getAlarms().setFireDischargePort(port);
        judge(FireFoughtFromOutside.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutAnswers() {
        judge(FireFoughtFromOutside.check(), record).cannotTell("alarms.fixedFireSystem");
        record.getAlarms().setFixedFireSystem(Answer.NO);
        judge(FireFoughtFromOutside.check(), record).cannotTell("alarms.fireDischargePort");
    }
}
