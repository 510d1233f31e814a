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

class SeacockStandsLoadTest {

    private final CommissioningRecord record = Installation.empty();
    private final Seacock seacock = record.getRawWater().getSeacock();

    @BeforeEach
    void applies() {
        seacock.setKind(ValveKind.FLANGED_SEACOCK);
    }

    // ABYC H-27, as quoted
    @Test
    void meetsWhenTheAnswerIsYes() {
        seacock.setStaticLoadMarked(Answer.YES);
        judge(SeacockStandsLoad.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        seacock.setStaticLoadMarked(Answer.NO);
        judge(SeacockStandsLoad.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeacockStandsLoad.check(), record).cannotTell("rawWater.seacock.staticLoadMarked");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        seacock.setStaticLoadMarked(Answer.NOT_APPLICABLE);
        judge(SeacockStandsLoad.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWithoutASeacock() {
        seacock.setStaticLoadMarked(Answer.NO);
        seacock.setKind(ValveKind.NONE);
        judge(SeacockStandsLoad.check(), record).doesNotApply();
    }
}
