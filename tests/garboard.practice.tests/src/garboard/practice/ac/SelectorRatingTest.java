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
import garboard.practice.testing.Installation;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

class SelectorRatingTest {

    // S / U and S / (sqrt(3) U): 20 kVA 230 V 87.0 A; 25 kVA 400 V 36.1 A; 50 kVA 208 V 138.8 A
    @ParameterizedTest
    @CsvSource({ "20 kVA, 230 V, SINGLE_PHASE, 87 A, 86.96, MEETS", "20 kVA, 230 V, SINGLE_PHASE, 80 A, 86.96, FALLS_SHORT",
        "25 kVA, 400 V, THREE_PHASE, 40 A, 36.08, MEETS", "25 kVA, 400 V, THREE_PHASE, 32 A, 36.08, FALLS_SHORT",
        "50 kVA, 208 V, THREE_PHASE, 125 A, 138.8, FALLS_SHORT", "8 kVA, 240 V, SPLIT_PHASE, 33 A, 33.33, FALLS_SHORT" })
    void carriesTheFullLoad(String apparent, String voltage, PhaseSystem phases, String rated, double fullLoadA, Standing standing) {
        CommissioningRecord record = Board.set(apparent, voltage, phases);
        record.getAcOutput().getTransfer().setRatedCurrent(Current.valueOf(rated));
        judge(SelectorRating.check(), record).is(standing).limit(fullLoadA, "A", 0.05);
    }

    @Test
    void exactlyTheFullLoad() {
        CommissioningRecord record = Board.set("6 kVA", "120 V", PhaseSystem.SINGLE_PHASE);
        record.getAcOutput().getTransfer().setRatedCurrent(Current.of(50, "A"));
        judge(SelectorRating.check(), record).meets();
    }

    @Test
    void activePowerAndPowerFactorStandInForTheApparentPower() {
        // 46 CFR 183.320: kW / (sqrt(3) V pf): 20 kW 208 V pf 0.8 69.393 A
        CommissioningRecord record = Installation.empty();
        record.getGeneratorSet().setRatedPower(Power.of(20, "kW"));
        record.getGeneratorSet().setRatedPowerFactor(Ratio.of(0.8));
        record.getGeneratorSet().setRatedVoltage(Voltage.of(208, "V"));
        record.getGeneratorSet().setPhases(PhaseSystem.THREE_PHASE);
        record.getAcOutput().getTransfer().setRatedCurrent(Current.of(70, "A"));
        judge(SelectorRating.check(), record).meets().limit(69.393, "A", 0.0005);
    }

    @Test
    void remedyRoundsUpToFiveAmperes() {
        CommissioningRecord record = Board.set("20 kVA", "230 V", PhaseSystem.SINGLE_PHASE);
        record.getAcOutput().getTransfer().setRatedCurrent(Current.of(63, "A"));
        judge(SelectorRating.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getTransfer().getRatedCurrent()).isEqualTo(Current.of(90, "A"));
    }

    @Test
    void cannotTellWithoutPlateOrRating() {
        judge(SelectorRating.check(), Installation.empty()).cannotTell("generatorSet.ratedPower", "generatorSet.ratedPowerFactor",
            "generatorSet.ratedVoltage", "generatorSet.phases", "acOutput.transfer.ratedCurrent");
    }
}
