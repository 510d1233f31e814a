// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class CarbonMonoxideAlwaysPoweredTest {

    @Test
    void answered() { // trade press as quoted: no panel switch may cut them
        Question.of(CarbonMonoxideAlwaysPowered.check(), ALARMS_AND_SAFETY__CARBON_MONOXIDE_ALWAYS_POWERED).at(CommissioningRecord::getAlarms)
            .wants(Answer.YES, "alarms.carbonMonoxideAlwaysPowered");
    }
}
