// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__FIRE_EXTINGUISHER;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class FireExtinguisherInReachTest {

    @Test
    void answered() { // common practice
        Question.of(FireExtinguisherInReach.check(), ALARMS_AND_SAFETY__FIRE_EXTINGUISHER).at(CommissioningRecord::getAlarms)
            .wants(Answer.YES, "alarms.fireExtinguisher");
    }
}
