// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.quantity.Current;

class MainDeviceRatingByLawTest {

    private final CommissioningRecord record = Board.set("6 kVA", "120 V", PhaseSystem.SINGLE_PHASE);

    @BeforeEach
    void applies() {
        Board.gasolineBoat(record);
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
    }

    // 33 CFR 183.460(b), from memory: 120 %; 60 A of 50 A
    @ParameterizedTest
    @CsvSource({ "60 A, MEETS", "60000 mA, MEETS", "61 A, FALLS_SHORT", "70 A, FALLS_SHORT" })
    void atMost120PerCent(String rating, Standing standing) {
        record.getAcOutput().setProtectionRating(Current.valueOf(rating));
        judge(MainDeviceRatingByLaw.check(), record).is(standing).limit(60, "A", 1e-9);
    }

    @Test
    void remedyIsTheLargestStandardRating() {
        record.getAcOutput().setProtectionRating(Current.of(70, "A"));
        judge(MainDeviceRatingByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectionRating().si()).isEqualTo(60);
    }

    @Test
    void cannotTellWithoutTheRating() {
        judge(MainDeviceRatingByLaw.check(), record).cannotTell("acOutput.protectionRating");
    }

    @Test
    void doesNotApplyWithoutADeviceOrAGasolineEngine() {
        record.getAcOutput().setProtectionDevice(ProtectionKind.NONE);
        judge(MainDeviceRatingByLaw.check(), record).doesNotApply();
        record.getAcOutput().setProtectionDevice(ProtectionKind.FUSE);
        Board.dieselBoat(record);
        judge(MainDeviceRatingByLaw.check(), record).doesNotApply();
    }
}
