// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEST_TAP_FITTED;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustTestTapTest {

    // tap on the riser: Gerr, Boat Mechanical Systems Handbook
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustTestTap.check(), EXHAUST_RUN__TEST_TAP_FITTED).at(record -> record.getExhaust())
            .wants(Answer.YES, "exhaust.testTapFitted");
    }
}
