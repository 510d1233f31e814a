// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__RESIDUAL_CURRENT_DEVICE;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class ResidualDeviceFittedTest {

    @Test
    void answered() { // common practice
        Question.of(ResidualDeviceFitted.check(), AC_OUTPUT__RESIDUAL_CURRENT_DEVICE).at(CommissioningRecord::getAcOutput)
            .wants(Answer.YES, "acOutput.residualCurrentDevice");
    }
}
