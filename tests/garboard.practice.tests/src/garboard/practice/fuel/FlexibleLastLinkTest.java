// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelSupply;
import garboard.practice.testing.Installation;

class FlexibleLastLinkTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelSupply fuelSupply = record.getFuelSupply();

    // Gerr, Boat Mechanical Systems Handbook (2009)
    @Test
    void meetsWhenTheAnswerIsYes() {
        fuelSupply.setFlexibleLastLink(Answer.YES);
        judge(FlexibleLastLink.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        fuelSupply.setFlexibleLastLink(Answer.NO);
        judge(FlexibleLastLink.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(FlexibleLastLink.check(), record).cannotTell("fuelSupply.flexibleLastLink");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        fuelSupply.setFlexibleLastLink(Answer.NOT_APPLICABLE);
        judge(FlexibleLastLink.check(), record).doesNotApply();
    }
}
