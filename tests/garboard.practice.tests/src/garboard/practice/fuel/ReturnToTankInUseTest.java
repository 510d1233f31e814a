// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelSupply;
import garboard.practice.testing.Installation;

class ReturnToTankInUseTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    // Gerr, Boat Mechanical Systems Handbook (2009)
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSupply.setReturnToTankInUse(Answer.YES);
        judge(ReturnToTankInUse.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSupply.setReturnToTankInUse(Answer.NO);
        judge(ReturnToTankInUse.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(ReturnToTankInUse.check(), record).cannotTell("fuelSupply.returnToTankInUse");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        fuelSupply.setReturnToTankInUse(Answer.NOT_APPLICABLE);
        judge(ReturnToTankInUse.check(), record).doesNotApply();
    }
}
