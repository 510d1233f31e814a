// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__OWN_SYSTEM;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustOwnSystemTest {

    // common practice
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustOwnSystem.check(), EXHAUST_RUN__OWN_SYSTEM).at(record -> record.getExhaust())
            .wants(Answer.YES, "exhaust.ownSystem");
    }
}
