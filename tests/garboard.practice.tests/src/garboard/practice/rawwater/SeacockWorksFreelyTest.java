// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.Seacock;
import garboard.model.ValveKind;
import garboard.practice.testing.Installation;

class SeacockWorksFreelyTest {

    private final CommissioningRecord record = Installation.empty();
    private final Seacock seacock = record.getRawWater().getSeacock();

    @BeforeEach
    void applies() {
        seacock.setKind(ValveKind.FLANGED_SEACOCK);
    }

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        seacock.setWorksFreely(Answer.YES);
        judge(SeacockWorksFreely.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        seacock.setWorksFreely(Answer.NO);
        judge(SeacockWorksFreely.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeacockWorksFreely.check(), record).cannotTell("rawWater.seacock.worksFreely");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        seacock.setWorksFreely(Answer.NOT_APPLICABLE);
        judge(SeacockWorksFreely.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWithoutASeacock() {
        seacock.setWorksFreely(Answer.NO);
        seacock.setKind(ValveKind.NONE);
        judge(SeacockWorksFreely.check(), record).doesNotApply();
    }
}
