// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__WEIGHT_ON_MANIFOLD;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustWeightOffManifoldTest {

    // marine trade press
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustWeightOffManifold.check(), EXHAUST_RUN__WEIGHT_ON_MANIFOLD).at(record -> record.getExhaust())
            .wants(Answer.NO, "exhaust.weightOnManifold");
    }
}
