// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__MOUNTS_ALIGNED;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class MountsAlignedTest {

    @Test
    void answered() { // common practice
        Question.of(MountsAligned.check(), MOUNTING__MOUNTS_ALIGNED).at(CommissioningRecord::getMounting).wants(Answer.YES, "mounting.mountsAligned");
    }
}
