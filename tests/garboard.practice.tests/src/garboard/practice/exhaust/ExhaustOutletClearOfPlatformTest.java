// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_OUTLET__UNDER_SWIM_PLATFORM;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustOutletClearOfPlatformTest {

    // common practice
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustOutletClearOfPlatform.check(), EXHAUST_OUTLET__UNDER_SWIM_PLATFORM).at(record -> record.getExhaust().getOutlet())
            .wants(Answer.NO, "exhaust.outlet.underSwimPlatform");
    }
}
