// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelSeparator;
import garboard.practice.testing.Installation;

class SeparatorNotHighestTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSeparator fuelSeparator = record.getFuelSupply().getSeparator();

    // Gerr, Boat Mechanical Systems Handbook (2009)
    @Test
    void meetsWhenTheAnswerIsNo() {
        fuelSeparator.setHighestPointOfLine(Answer.NO);
        judge(SeparatorNotHighest.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsYes() {
        fuelSeparator.setHighestPointOfLine(Answer.YES);
        judge(SeparatorNotHighest.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeparatorNotHighest.check(), record).cannotTell("fuelSupply.separator.highestPointOfLine");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        fuelSeparator.setHighestPointOfLine(Answer.NOT_APPLICABLE);
        judge(SeparatorNotHighest.check(), record).doesNotApply();
    }
}
