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

class SeacockReachableTest {

    private final CommissioningRecord record = Installation.empty();
    private final Seacock seacock = record.getRawWater().getSeacock();

    @BeforeEach
    void applies() {
        seacock.setKind(ValveKind.FLANGED_SEACOCK);
    }

    // ABYC H-27, as quoted
    @Test
    void meetsWhenTheAnswerIsYes() {
        seacock.setReachableWithoutTools(Answer.YES);
        judge(SeacockReachable.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        seacock.setReachableWithoutTools(Answer.NO);
        judge(SeacockReachable.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeacockReachable.check(), record).cannotTell("rawWater.seacock.reachableWithoutTools");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        seacock.setReachableWithoutTools(Answer.NOT_APPLICABLE);
        judge(SeacockReachable.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWithoutASeacock() {
        seacock.setReachableWithoutTools(Answer.NO);
        seacock.setKind(ValveKind.NONE);
        judge(SeacockReachable.check(), record).doesNotApply();
    }
}
