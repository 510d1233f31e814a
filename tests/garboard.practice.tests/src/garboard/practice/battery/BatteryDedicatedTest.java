// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__DEDICATED_TO_GENERATOR;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class BatteryDedicatedTest {

    @Test
    void answered() { // common practice
        Question.of(BatteryDedicated.check(), STARTING_BATTERY__DEDICATED_TO_GENERATOR).at(CommissioningRecord::getStartingBattery)
            .wants(Answer.YES, "startingBattery.dedicatedToGenerator");
    }
}
