// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__EMERGENCY_CROSS_CONNECT;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class EmergencyCrossConnectTest {

    @Test
    void answered() { // common practice
        Question.of(EmergencyCrossConnect.check(), STARTING_BATTERY__EMERGENCY_CROSS_CONNECT).at(CommissioningRecord::getStartingBattery)
            .wants(Answer.YES, "startingBattery.emergencyCrossConnect");
    }
}
