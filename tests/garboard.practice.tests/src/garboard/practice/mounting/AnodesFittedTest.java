// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__ANODES_FITTED;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class AnodesFittedTest {

    @Test
    void answered() { // common practice
        Question.of(AnodesFitted.check(), MOUNTING__ANODES_FITTED).at(CommissioningRecord::getMounting).wants(Answer.YES, "mounting.anodesFitted");
    }
}
