// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelSupply;
import garboard.practice.testing.Installation;

class ReturnCannotDeadHeadTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    // Gerr, Boat Mechanical Systems Handbook (2009)
    @Test
    void meetsWhenTheAnswerIsNo() {
        fuelSupply.setReturnCanDeadHead(Answer.NO);
        judge(ReturnCannotDeadHead.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsYes() {
        fuelSupply.setReturnCanDeadHead(Answer.YES);
        judge(ReturnCannotDeadHead.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(ReturnCannotDeadHead.check(), record).cannotTell("fuelSupply.returnCanDeadHead");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        fuelSupply.setReturnCanDeadHead(Answer.NOT_APPLICABLE);
        judge(ReturnCannotDeadHead.check(), record).doesNotApply();
    }
}
