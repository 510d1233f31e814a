// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustSagFreeTest {

    private static CommissioningRecord answered(Answer free) {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.CREST_TO_OUTLET).setSagFree(free);
        return record;
    }

    // continuous fall: Gerr, Boat Mechanical Systems Handbook
    @ParameterizedTest
    @CsvSource({ "YES, MEETS", "NO, FALLS_SHORT", "NOT_APPLICABLE, DOES_NOT_APPLY" })
    void followsTheAnswer(Answer free, Standing expected) {
        judge(ExhaustSagFree.check(), answered(free)).is(expected);
    }

    @Test
    void aClimbIsAPocketWhateverTheAnswer() {
        CommissioningRecord record = answered(Answer.YES);
        exhaust(record).getSections().getFirst().setRise(Length.valueOf("50 mm"));
        judge(ExhaustSagFree.check(), record).fallsShort();
        exhaust(record).getSections().getFirst().setRise(Length.valueOf("0 mm"));
        judge(ExhaustSagFree.check(), record).meets();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(ExhaustSagFree.check(), answered(Answer.UNANSWERED)).cannotTell("exhaust.sections[run-1].sagFree");
    }
}
