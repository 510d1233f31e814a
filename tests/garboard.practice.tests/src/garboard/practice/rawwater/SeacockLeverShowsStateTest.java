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

class SeacockLeverShowsStateTest {

    private final CommissioningRecord record = Installation.empty();
    private final Seacock seacock = record.getRawWater().getSeacock();

    @BeforeEach
    void applies() {
        seacock.setKind(ValveKind.FLANGED_SEACOCK);
    }

    // ABYC H-27, as quoted
    @Test
    void meetsWhenTheAnswerIsYes() {
        seacock.setLeverShowsState(Answer.YES);
        judge(SeacockLeverShowsState.check(), record).meets();
    }

    @Test
    void fallsShortWhenTheAnswerIsNo() {
        seacock.setLeverShowsState(Answer.NO);
        judge(SeacockLeverShowsState.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutAnAnswer() {
        judge(SeacockLeverShowsState.check(), record).cannotTell("rawWater.seacock.leverShowsState");
    }

    @Test
    void doesNotApplyWhenMarkedSo() {
        seacock.setLeverShowsState(Answer.NOT_APPLICABLE);
        judge(SeacockLeverShowsState.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyWithoutASeacock() {
        seacock.setLeverShowsState(Answer.NO);
        seacock.setKind(ValveKind.NONE);
        judge(SeacockLeverShowsState.check(), record).doesNotApply();
    }
}
