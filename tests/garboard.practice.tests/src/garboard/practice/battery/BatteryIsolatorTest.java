// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__ISOLATING_SWITCH;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class BatteryIsolatorTest {

    @Test
    void answered() { // common practice
        Question.of(BatteryIsolator.check(), STARTING_BATTERY__ISOLATING_SWITCH).at(CommissioningRecord::getStartingBattery)
            .wants(Answer.YES, "startingBattery.isolatingSwitch");
    }
}
