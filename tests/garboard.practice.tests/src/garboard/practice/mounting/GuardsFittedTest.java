// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__ROTATING_PARTS_GUARDED;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class GuardsFittedTest {

    @Test
    void answered() { // common practice
        Question.of(GuardsFitted.check(), MOUNTING__ROTATING_PARTS_GUARDED).at(CommissioningRecord::getMounting)
            .wants(Answer.YES, "mounting.rotatingPartsGuarded");
    }
}
