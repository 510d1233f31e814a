// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.TransferKind;
import garboard.model.TransferSwitch;
import garboard.practice.testing.Installation;

class SourcesInterlockedTest {

    private final CommissioningRecord record = Installation.empty();
    private final TransferSwitch transfer = record.getAcOutput().getTransfer();

    // 46 CFR 183.390(d): interlocked; a rotary selector and an automatic one that breaks first cannot join two sources
    @ParameterizedTest
    @CsvSource({ "ROTARY_SELECTOR, UNANSWERED, MEETS", "ROTARY_SELECTOR, YES, MEETS", "ROTARY_SELECTOR, NO, FALLS_SHORT",
        "AUTOMATIC_BREAK_BEFORE_MAKE, UNANSWERED, MEETS", "AUTOMATIC_BREAK_BEFORE_MAKE, NO, FALLS_SHORT", "INTERLOCKED_BREAKERS, YES, MEETS",
        "INTERLOCKED_BREAKERS, NO, FALLS_SHORT", "INTERLOCKED_BREAKERS, NOT_APPLICABLE, FALLS_SHORT", "SEPARATE_BREAKERS, YES, FALLS_SHORT",
        "NONE, UNANSWERED, FALLS_SHORT" })
    void oneSourceAtATime(TransferKind kind, Answer interlocked, Standing standing) {
        transfer.setKind(kind);
        transfer.setInterlocked(interlocked);
        judge(SourcesInterlocked.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheKindOrTheInterlock() {
        judge(SourcesInterlocked.check(), record).cannotTell("acOutput.transfer.kind");
        transfer.setKind(TransferKind.INTERLOCKED_BREAKERS);
        judge(SourcesInterlocked.check(), record).cannotTell("acOutput.transfer.interlocked");
    }

    @Test
    void doesNotApplyWithoutAShoreInletOrWhereTheLawSpeaks() {
        transfer.setKind(TransferKind.NONE);
        record.getAcOutput().setShoreInletResidualDevice(Answer.NOT_APPLICABLE);
        judge(SourcesInterlocked.check(), record).doesNotApply();
        record.getAcOutput().setShoreInletResidualDevice(Answer.NO);
        Board.passengers(record);
        judge(SourcesInterlocked.check(), record).doesNotApply();
    }
}
