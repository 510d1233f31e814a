// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.RISER__INJECTION_POINTS_DOWN;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustInjectionPointsDownTest {

    // pointing down, spray all round: marine trade press
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustInjectionPointsDown.check(), RISER__INJECTION_POINTS_DOWN).at(record -> record.getExhaust().getRiser())
            .wants(Answer.YES, "exhaust.riser.injectionPointsDown");
    }
}
