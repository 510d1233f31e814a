// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.WaterStrainer;
import garboard.practice.testing.Installation;

class StrainerCanBeLookedIntoTest {

    private final CommissioningRecord record = Installation.empty();
    private final WaterStrainer waterStrainer = record.getRawWater().getStrainer();

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        waterStrainer.setSeeThroughOrOpenable(Answer.YES);
        judge(StrainerCanBeLookedInto.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        waterStrainer.setSeeThroughOrOpenable(Answer.NO);
        judge(StrainerCanBeLookedInto.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(StrainerCanBeLookedInto.check(), record).cannotTell("rawWater.strainer.seeThroughOrOpenable");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        waterStrainer.setSeeThroughOrOpenable(Answer.NOT_APPLICABLE);
        judge(StrainerCanBeLookedInto.check(), record).doesNotApply();
    }
}
