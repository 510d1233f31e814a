// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__BONDED_TO_COMMON_GROUND;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class BondedTest {

    @Test
    void answered() { // ABYC E-11 as quoted: AC ground bus tied to DC negative or engine
        Question.of(Bonded.check(), MOUNTING__BONDED_TO_COMMON_GROUND).at(CommissioningRecord::getMounting)
            .wants(Answer.YES, "mounting.bondedToCommonGround");
    }
}
