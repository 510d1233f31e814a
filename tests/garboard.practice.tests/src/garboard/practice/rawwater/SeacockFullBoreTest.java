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

class SeacockFullBoreTest {

    private final CommissioningRecord record = Installation.empty();
    private final Seacock seacock = record.getRawWater().getSeacock();

    @BeforeEach
    void applies() {
        seacock.setKind(ValveKind.FLANGED_SEACOCK);
    }

    // common practice
    @Test
    void meetsWhenTheAnswerIsYes() {
        seacock.setFullBore(Answer.YES);
        judge(SeacockFullBore.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        seacock.setFullBore(Answer.NO);
        judge(SeacockFullBore.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeacockFullBore.check(), record).cannotTell("rawWater.seacock.fullBore");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        seacock.setFullBore(Answer.NOT_APPLICABLE);
        judge(SeacockFullBore.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWithoutASeacock() {
        seacock.setFullBore(Answer.NO);
        seacock.setKind(ValveKind.NONE);
        judge(SeacockFullBore.check(), record).doesNotApply();
    }
}
