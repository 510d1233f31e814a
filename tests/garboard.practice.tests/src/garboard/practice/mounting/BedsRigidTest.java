// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__BEDS_RIGID;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class BedsRigidTest {

    @Test
    void answered() { // common practice
        Question.of(BedsRigid.check(), MOUNTING__BEDS_RIGID).at(CommissioningRecord::getMounting).wants(Answer.YES, "mounting.bedsRigid");
    }
}
