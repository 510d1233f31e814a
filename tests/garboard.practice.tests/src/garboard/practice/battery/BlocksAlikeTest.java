// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__SAME_TYPE_AND_AGE;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class BlocksAlikeTest {

    @Test
    void sameTypeAndAge() { // common practice
        Question.of(BlocksAlike.check(), STARTING_BATTERY__SAME_TYPE_AND_AGE).at(CommissioningRecord::getStartingBattery).in(record -> {
            record.getStartingBattery().setBlocksInSeries(1);
            record.getStartingBattery().setStringsInParallel(2);
        }).wants(Answer.YES, "startingBattery.sameTypeAndAge");
    }

    @Test
    void doesNotApplyToASingleBlock() {
        judge(BlocksAlike.check(), Bench.flooded()).doesNotApply();
    }
}
