// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__POSITIVE_TERMINAL_COVERED;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class PositiveTerminalCoveredTest {

    @Test
    void answered() { // common practice
        Question.of(PositiveTerminalCovered.check(), STARTING_BATTERY__POSITIVE_TERMINAL_COVERED).at(CommissioningRecord::getStartingBattery)
            .wants(Answer.YES, "startingBattery.positiveTerminalCovered");
    }
}
