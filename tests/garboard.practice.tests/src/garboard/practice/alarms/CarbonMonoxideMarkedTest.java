// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class CarbonMonoxideMarkedTest {

    @Test
    void answered() { // UL 2034 as quoted
        Question.of(CarbonMonoxideMarked.check(), ALARMS_AND_SAFETY__CARBON_MONOXIDE_MARKED).at(CommissioningRecord::getAlarms)
            .wants(Answer.YES, "alarms.carbonMonoxideMarked");
    }
}
