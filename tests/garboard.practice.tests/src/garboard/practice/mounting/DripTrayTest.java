// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__DRIP_TRAY;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class DripTrayTest {

    @Test
    void answered() { // common practice
        Question.of(DripTray.check(), MOUNTING__DRIP_TRAY).at(CommissioningRecord::getMounting).wants(Answer.YES, "mounting.dripTray");
    }
}
