// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelSupply;
import garboard.practice.testing.Installation;

class NoScreenInTankTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    // Gerr, Boat Mechanical Systems Handbook (2009)
    @Test
    void meetsWhenTheAnswerIsNo() {
        fuelSupply.setPickUpScreen(Answer.NO);
        judge(NoScreenInTank.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsYes() {
        fuelSupply.setPickUpScreen(Answer.YES);
        judge(NoScreenInTank.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(NoScreenInTank.check(), record).cannotTell("fuelSupply.pickUpScreen");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        fuelSupply.setPickUpScreen(Answer.NOT_APPLICABLE);
        judge(NoScreenInTank.check(), record).doesNotApply();
    }
}
