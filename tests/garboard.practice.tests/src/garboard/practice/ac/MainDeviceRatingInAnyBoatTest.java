// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.practice.testing.Installation;
import garboard.quantity.Current;

class MainDeviceRatingInAnyBoatTest {

    private static CommissioningRecord device(String apparent, String voltage, PhaseSystem phases, String rating) {
        CommissioningRecord record = Board.set(apparent, voltage, phases);
        Board.dieselBoat(record);
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
        record.getAcOutput().setProtectionRating(Current.valueOf(rating));
        return record;
    }

    // 46 CFR 28.860(a): 115 %: 36.1 A -> 41.5 A; 87.0 -> 100.0; 33.3 -> 38.3 A
    @ParameterizedTest
    @CsvSource({ "25 kVA, 400 V, THREE_PHASE, 40 A, 41.5, MEETS", "25 kVA, 400 V, THREE_PHASE, 45 A, 41.5, FALLS_SHORT",
        "20 kVA, 230 V, SINGLE_PHASE, 100 A, 100.0, MEETS", "20 kVA, 230 V, SINGLE_PHASE, 110 A, 100.0, FALLS_SHORT",
        "8 kVA, 240 V, SPLIT_PHASE, 38000 mA, 38.3, MEETS", "8 kVA, 240 V, SPLIT_PHASE, 40 A, 38.3, FALLS_SHORT" })
    void atMost115PerCent(String apparent, String voltage, PhaseSystem phases, String rating, double mostA, Standing standing) {
        judge(MainDeviceRatingInAnyBoat.check(), device(apparent, voltage, phases, rating)).is(standing).limit(mostA, "A", 0.05);
    }

    @Test
    void remedyIsTheLargestStandardRating() {
        // NFPA 70, 240.6, from memory: 35, 40, 45
        CommissioningRecord record = device("25 kVA", "400 V", PhaseSystem.THREE_PHASE, "63 A");
        judge(MainDeviceRatingInAnyBoat.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectionRating().si()).isEqualTo(40);
    }

    @Test
    void remedyBelowTheStandardRatingsIsAWholeAmpere() {
        CommissioningRecord record = device("2.3 kVA", "230 V", PhaseSystem.SINGLE_PHASE, "16 A"); // 115 % of 10 A
        judge(MainDeviceRatingInAnyBoat.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectionRating()).isEqualTo(Current.of(11, "A"));
    }

    @Test
    void cannotTellWithoutPlateOrRating() {
        CommissioningRecord record = Installation.empty();
        judge(MainDeviceRatingInAnyBoat.check(), record).cannotTell("acOutput.protectionDevice", "generatorSet.ratedVoltage", "generatorSet.phases",
            "acOutput.protectionRating");
        record.getAcOutput().setProtectionDevice(ProtectionKind.FUSE);
        judge(MainDeviceRatingInAnyBoat.check(), record).cannotTell("generatorSet.ratedPower", "generatorSet.ratedPowerFactor",
            "generatorSet.ratedVoltage", "generatorSet.phases", "acOutput.protectionRating");
    }

    @Test
    void stepsBackWhereTheLawIsBroken() {
        CommissioningRecord record = device("25 kVA", "400 V", PhaseSystem.THREE_PHASE, "45 A");
        Board.gasolineBoat(record); // 33 CFR 183.460(b), from memory: 120 % of 36.1 A = 43.3 A
        judge(MainDeviceRatingInAnyBoat.check(), record).doesNotApply();
        record.getAcOutput().setProtectionRating(Current.of(43, "A"));
        judge(MainDeviceRatingInAnyBoat.check(), record).fallsShort();
    }

    @Test
    void doesNotApplyWithoutADeviceOrWhereTheLawSpeaks() {
        CommissioningRecord record = device("25 kVA", "400 V", PhaseSystem.THREE_PHASE, "63 A");
        record.getAcOutput().setProtectionDevice(ProtectionKind.NONE);
        judge(MainDeviceRatingInAnyBoat.check(), record).doesNotApply();
        record.getAcOutput().setProtectionDevice(ProtectionKind.FUSE);
        Board.passengers(record);
        judge(MainDeviceRatingInAnyBoat.check(), record).doesNotApply();
    }
}
