// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelSupply;
import garboard.practice.testing.Installation;

class OwnPickUpTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSupply.setOwnPickUp(Answer.YES);
        judge(OwnPickUp.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSupply.setOwnPickUp(Answer.NO);
        judge(OwnPickUp.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(OwnPickUp.check(), record).cannotTell("fuelSupply.ownPickUp");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        fuelSupply.setOwnPickUp(Answer.NOT_APPLICABLE);
        judge(OwnPickUp.check(), record).doesNotApply();
    }
}
