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
import garboard.model.VesselService;
import garboard.practice.testing.Installation;

class SourcesInterlockedOnPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();
    private final TransferSwitch transfer = record.getAcOutput().getTransfer();

    // 46 CFR 183.390(d)
    @ParameterizedTest
    @CsvSource({ "INTERLOCKED_BREAKERS, YES, MEETS", "INTERLOCKED_BREAKERS, NO, FALLS_SHORT", "ROTARY_SELECTOR, UNANSWERED, MEETS",
        "SEPARATE_BREAKERS, UNANSWERED, FALLS_SHORT", "NONE, UNANSWERED, FALLS_SHORT" })
    void oneSourceAtATime(TransferKind kind, Answer interlocked, Standing standing) {
        Board.passengers(record);
        transfer.setKind(kind);
        transfer.setInterlocked(interlocked);
        judge(SourcesInterlockedOnPassengerVessel.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheKind() {
        Board.passengers(record);
        judge(SourcesInterlockedOnPassengerVessel.check(), record).cannotTell("acOutput.transfer.kind");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.FISHING);
        judge(SourcesInterlockedOnPassengerVessel.check(), record).doesNotApply();
    }
}
