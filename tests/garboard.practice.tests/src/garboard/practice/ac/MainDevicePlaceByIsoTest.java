// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.quantity.Length;

class MainDevicePlaceByIsoTest {

    private final CommissioningRecord record = Board.yacht();

    @BeforeEach
    void applies() {
        Board.dieselBoat(record);
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
    }

    // ISO 13297 as quoted: within 0.5 m, or the conductor protected
    @ParameterizedTest
    @CsvSource({ "0.5 m, UNANSWERED, MEETS", "500 mm, NO, MEETS", "19 in, NO, MEETS", "20 in, NO, FALLS_SHORT", "2 m, YES, MEETS", "2 m, NO, FALLS_SHORT" })
    void closeToTheSetOrSheathed(String distance, Answer sheathed, Standing standing) {
        record.getAcOutput().setProtectionDistance(Length.valueOf(distance));
        record.getAcOutput().getOutputCable().setSheathedToProtection(sheathed);
        judge(MainDevicePlaceByIso.check(), record).is(standing);
    }

    @Test
    void remedyMovesTheDevice() {
        record.getAcOutput().setProtectionDistance(Length.of(2));
        record.getAcOutput().getOutputCable().setSheathedToProtection(Answer.NO);
        judge(MainDevicePlaceByIso.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutDistanceOrSheath() {
        judge(MainDevicePlaceByIso.check(), record).cannotTell("acOutput.protectionDistance");
        record.getAcOutput().setProtectionDistance(Length.of(0.6));
        judge(MainDevicePlaceByIso.check(), record).cannotTell("acOutput.outputCable.sheathedToProtection");
    }

    @Test
    void doesNotApplyToThreePhasesOrWhereTheLawSpeaks() {
        record.getAcOutput().setProtectionDistance(Length.of(0.4));
        Board.gasolineBoat(record);
        judge(MainDevicePlaceByIso.check(), record).doesNotApply();
        Board.dieselBoat(record);
        record.getGeneratorSet().setPhases(PhaseSystem.THREE_PHASE);
        judge(MainDevicePlaceByIso.check(), record).doesNotApply();
    }
}
