// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class BatteryIsolatorReachableTest {

    @Test
    void answered() { // common practice
        Question.of(BatteryIsolatorReachable.check(), STARTING_BATTERY__ISOLATING_SWITCH_REACHABLE).at(CommissioningRecord::getStartingBattery)
            .in(record -> record.getStartingBattery().setIsolatingSwitch(Answer.YES))
            .wants(Answer.YES, "startingBattery.isolatingSwitchReachable");
    }

    @Test
    void doesNotApplyWithoutASwitch() {
        CommissioningRecord record = Bench.flooded();
        record.getStartingBattery().setIsolatingSwitch(Answer.NO);
        judge(BatteryIsolatorReachable.check(), record).doesNotApply();
    }
}
