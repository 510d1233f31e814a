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
import garboard.model.ProtectionKind;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class MainDevicePlaceByLawTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void applies() {
        Board.gasolineBoat(record);
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
    }

    // 33 CFR 183.455(b): 7 in; 40 in where sheathed all the way; 9 in unsheathed fails, sheathed passes
    @ParameterizedTest
    @CsvSource({ "7 in, UNANSWERED, 7, MEETS", "177.8 mm, NO, 7, MEETS", "9 in, NO, 7, FALLS_SHORT", "9 in, YES, 40, MEETS", "40 in, YES, 40, MEETS",
        "41 in, YES, 40, FALLS_SHORT" })
    void closeToTheSet(String distance, Answer sheathed, double mostIn, Standing standing) {
        record.getAcOutput().setProtectionDistance(Length.valueOf(distance));
        record.getAcOutput().getOutputCable().setSheathedToProtection(sheathed);
        judge(MainDevicePlaceByLaw.check(), record).is(standing).limit(mostIn, "in", 1e-9);
    }

    @Test
    void remedyMovesTheDevice() {
        record.getAcOutput().setProtectionDistance(Length.of(2));
        record.getAcOutput().getOutputCable().setSheathedToProtection(Answer.YES);
        judge(MainDevicePlaceByLaw.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutDistanceOrSheath() {
        judge(MainDevicePlaceByLaw.check(), record).cannotTell("acOutput.protectionDistance");
        record.getAcOutput().setProtectionDistance(Length.of(8, "in"));
        judge(MainDevicePlaceByLaw.check(), record).cannotTell("acOutput.outputCable.sheathedToProtection");
    }

    @Test
    void doesNotApplyWithoutADeviceOrAGasolineEngine() {
        record.getAcOutput().setProtectionDevice(ProtectionKind.NONE);
        judge(MainDevicePlaceByLaw.check(), record).doesNotApply();
        record.getAcOutput().setProtectionDevice(ProtectionKind.FUSE);
        Board.dieselBoat(record);
        judge(MainDevicePlaceByLaw.check(), record).doesNotApply();
    }
}
