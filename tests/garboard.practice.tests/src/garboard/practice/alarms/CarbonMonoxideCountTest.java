// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class CarbonMonoxideCountTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged count(int alarms, int spaces) {
        record.getAlarms().setCarbonMonoxideAlarms(alarms);
        record.getAlarms().setHabitableSpaces(spaces);
        return judge(CarbonMonoxideCount.check(), record);
    }

    @Test
    void oneForEachSpace() { // ABYC A-24 (2025), summary: each habitable space
        count(3, 3).meets();
        count(4, 3).meets();
        count(2, 3).fallsShort().afterRemedy().meets();
    }

    @Test
    void stepsBackWhereASpaceIsKnownToHaveNone() {
        record.getAlarms().setCarbonMonoxideInEverySpace(Answer.NO);
        count(2, 3).doesNotApply();
    }

    @Test
    void cannotTellWithoutCounts() {
        judge(CarbonMonoxideCount.check(), record).cannotTell("alarms.carbonMonoxideAlarms", "alarms.habitableSpaces");
    }
}
