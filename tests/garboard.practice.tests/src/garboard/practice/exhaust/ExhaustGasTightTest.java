// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__GAS_TIGHT;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustGasTightTest {

    // ABYC P-1 as quoted
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustGasTight.check(), EXHAUST_RUN__GAS_TIGHT).at(record -> record.getExhaust())
            .wants(Answer.YES, "exhaust.gasTight");
    }
}
