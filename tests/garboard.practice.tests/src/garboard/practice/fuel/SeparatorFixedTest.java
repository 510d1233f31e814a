// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelSeparator;
import garboard.practice.testing.Installation;

class SeparatorFixedTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSeparator fuelSeparator = record.getFuelSupply().getSeparator();

    // Gerr, Boat Mechanical Systems Handbook (2009)
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSeparator.setFixedToStructure(Answer.YES);
        judge(SeparatorFixed.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSeparator.setFixedToStructure(Answer.NO);
        judge(SeparatorFixed.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeparatorFixed.check(), record).cannotTell("fuelSupply.separator.fixedToStructure");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        fuelSeparator.setFixedToStructure(Answer.NOT_APPLICABLE);
        judge(SeparatorFixed.check(), record).doesNotApply();
    }
}
