// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class CarbonMonoxideInEverySpaceTest {

    @Test
    void answered() { // ABYC A-24 (2025), summary: each habitable space
        Question.of(CarbonMonoxideInEverySpace.check(), ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE).at(CommissioningRecord::getAlarms)
            .wants(Answer.YES, "alarms.carbonMonoxideInEverySpace");
    }
}
