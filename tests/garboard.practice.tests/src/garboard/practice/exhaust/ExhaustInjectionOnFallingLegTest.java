// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.RISER__INJECTION_ON_FALLING_LEG;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustInjectionOnFallingLegTest {

    // injection after the crest: marine trade press
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustInjectionOnFallingLeg.check(), RISER__INJECTION_ON_FALLING_LEG).at(record -> record.getExhaust().getRiser())
            .wants(Answer.YES, "exhaust.riser.injectionOnFallingLeg");
    }
}
