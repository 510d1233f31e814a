// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__NEAR_OPENINGS;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustOutletClearOfOpeningsTest {

    // common practice
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustOutletClearOfOpenings.check(), EXHAUST_OUTLET__NEAR_OPENINGS).at(record -> record.getExhaust().getOutlet())
            .wants(Answer.NO, "exhaust.outlet.nearOpenings");
    }
}
