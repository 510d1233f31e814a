// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.model.GarboardPackage.Literals.MOUNTING__FLEXIBLE_CONNECTIONS;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class FlexibleConnectionsTest {

    @Test
    void answered() { // common practice
        Question.of(FlexibleConnections.check(), MOUNTING__FLEXIBLE_CONNECTIONS).at(CommissioningRecord::getMounting)
            .wants(Answer.YES, "mounting.flexibleConnections");
    }
}
