// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class FireSystemStopsSetTest {

    @Test
    void answered() { // common practice
        Question.of(FireSystemStopsSet.check(), ALARMS_AND_SAFETY__FIRE_SYSTEM_STOPS_SET).at(CommissioningRecord::getAlarms)
            .in(record -> record.getAlarms().setFixedFireSystem(Answer.YES)).demands(Answer.YES, "alarms.fireSystemStopsSet");
    }

    @Test
    void doesNotApplyWithoutAFixedSystem() {
        CommissioningRecord record = Installation.empty();
        record.getAlarms().setFixedFireSystem(Answer.NO);
        judge(FireSystemStopsSet.check(), record).doesNotApply();
    }
}
