// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__WARNING_LABELS;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class WarningLabelsTest {

    @Test
    void answered() { // common practice
        Question.of(WarningLabels.check(), ALARMS_AND_SAFETY__WARNING_LABELS).at(CommissioningRecord::getAlarms).wants(Answer.YES, "alarms.warningLabels");
    }

    @ParameterizedTest
    @CsvSource({ "UNANSWERED, YES, MEETS", "UNANSWERED, NO, FALLS_SHORT", "YES, NO, FALLS_SHORT", "NO, YES, FALLS_SHORT", "YES, YES, MEETS",
        "UNANSWERED, NOT_APPLICABLE, DOES_NOT_APPLY", "NOT_APPLICABLE, YES, MEETS" })
    void theMountingAnswersTheSameQuestion(Answer withTheAlarms, Answer withTheMounting, Standing standing) {
        CommissioningRecord record = Installation.empty();
        record.getAlarms().setWarningLabels(withTheAlarms);
        record.getMounting().setLabelsPosted(withTheMounting);
        judge(WarningLabels.check(), record).is(standing);
    }
}
