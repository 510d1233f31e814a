// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCKS_MIXED;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Question;

class StringUnmixedTest {

    @Test
    void oneKindInAString() { // common practice
        Question.of(StringUnmixed.check(), STARTING_BATTERY__BLOCKS_MIXED).at(CommissioningRecord::getStartingBattery)
            .in(record -> record.getStartingBattery().setBlocksInSeries(2)).wants(Answer.NO, "startingBattery.blocksMixed");
    }

    @Test
    void doesNotApplyWithoutASeriesString() {
        judge(StringUnmixed.check(), Bench.flooded()).doesNotApply();
    }
}
