// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.WaterStrainer;
import garboard.practice.testing.Installation;

class StrainerBesideSeacockTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterStrainer waterStrainer = record.getRawWater().getStrainer();

    // Gerr, Boat Mechanical Systems Handbook (2009), ch. 17
    @Test
    void meetsWhenTheAnswerIsYes() {
        waterStrainer.setBesideSeacock(Answer.YES);
        judge(StrainerBesideSeacock.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        waterStrainer.setBesideSeacock(Answer.NO);
        judge(StrainerBesideSeacock.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(StrainerBesideSeacock.check(), record).cannotTell("rawWater.strainer.besideSeacock");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        waterStrainer.setBesideSeacock(Answer.NOT_APPLICABLE);
        judge(StrainerBesideSeacock.check(), record).doesNotApply();
    }
}
