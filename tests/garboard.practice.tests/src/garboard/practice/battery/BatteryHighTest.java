// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__HIGH_ABOVE_BILGE;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class BatteryHighTest {

    @Test
    void answered() { // common practice
        Question.of(BatteryHigh.check(), STARTING_BATTERY__HIGH_ABOVE_BILGE).at(CommissioningRecord::getStartingBattery)
            .wants(Answer.YES, "startingBattery.highAboveBilge");
    }
}
