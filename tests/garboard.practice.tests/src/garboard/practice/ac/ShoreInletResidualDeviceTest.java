// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class ShoreInletResidualDeviceTest {

    @Test
    void answered() { // ABYC E-11 as quoted: 30 mA within 10 ft of the inlet
        Question.of(ShoreInletResidualDevice.check(), AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE).at(CommissioningRecord::getAcOutput)
            .wants(Answer.YES, "acOutput.shoreInletResidualDevice");
    }
}
