// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__SECURED;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class BatterySecuredTest {

    @Test
    void answered() { // common practice
        Question.of(BatterySecured.check(), STARTING_BATTERY__SECURED).at(CommissioningRecord::getStartingBattery)
            .wants(Answer.YES, "startingBattery.secured");
    }
}
