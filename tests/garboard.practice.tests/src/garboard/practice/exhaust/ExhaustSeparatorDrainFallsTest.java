// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.SEPARATOR_DRAIN__FALLS_ALL_THE_WAY;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Question;

class ExhaustSeparatorDrainFallsTest {

    // common practice
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustSeparatorDrainFalls.check(), SEPARATOR_DRAIN__FALLS_ALL_THE_WAY).at(record -> record.getExhaust().getSeparatorDrain())
            .in(ExhaustSeparatorDrainFallsTest::installation).wants(Answer.YES, "exhaust.separatorDrain.fallsAllTheWay");
    }

    @Test
    void doesNotApplyWithoutASeparator() {
        CommissioningRecord record = Installation.empty();
        record.getExhaust().getMuffler().setKind(MufflerKind.LIFT_MUFFLER);
        judge(ExhaustSeparatorDrainFalls.check(), record).doesNotApply();
    }

    private static void installation(CommissioningRecord record) {
        record.getExhaust().getMuffler().setKind(MufflerKind.GAS_WATER_SEPARATOR);
    }
}
