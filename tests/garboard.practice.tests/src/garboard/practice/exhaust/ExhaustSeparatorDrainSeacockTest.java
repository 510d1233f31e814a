// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.SEPARATOR_DRAIN__OWN_SEACOCK;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustSeparatorDrainSeacockTest {

    // common practice
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustSeparatorDrainSeacock.check(), SEPARATOR_DRAIN__OWN_SEACOCK).at(record -> record.getExhaust().getSeparatorDrain())
            .in(ExhaustSeparatorDrainSeacockTest::installation).wants(Answer.YES, "exhaust.separatorDrain.ownSeacock");
    }

    @Test
    void doesNotApplyWithoutASeparator() {
        CommissioningRecord record = Installation.empty();
        record.getExhaust().getMuffler().setKind(MufflerKind.STANDPIPE);
        judge(ExhaustSeparatorDrainSeacock.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getExhaust().getMuffler().setKind(MufflerKind.COMBINED_LIFT_AND_SEPARATOR);
    }
}
