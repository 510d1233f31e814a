// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__REMOTE_STOP;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class RemoteStopTest {

    @Test
    void answered() { // common practice
        Question.of(RemoteStop.check(), ALARMS_AND_SAFETY__REMOTE_STOP).at(CommissioningRecord::getAlarms).wants(Answer.YES, "alarms.remoteStop");
    }
}
