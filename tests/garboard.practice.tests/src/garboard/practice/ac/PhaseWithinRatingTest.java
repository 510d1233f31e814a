// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.practice.testing.Installation;

class PhaseWithinRatingTest {

    private void on(CommissioningRecord record, String phase, String power) {
        Board.load(record, phase, power, "1").setPhase(phase);
    }

    // derived: 15 kVA three-phase gives 5 kVA on each phase
    @ParameterizedTest
    @CsvSource({ "3 kW, MEETS", "4 kW, MEETS", "4.1 kW, FALLS_SHORT" })
    void aThirdOnEachPhase(String onFirst, Standing standing) {
        CommissioningRecord record = Board.set("15 kVA", "400 V", PhaseSystem.THREE_PHASE);
        on(record, "L1", onFirst);
        on(record, "L1-L2-L3", "3 kW");
        judge(PhaseWithinRating.check(), record).is(standing).limit(5, "kVA", 1e-9);
    }

    @Test
    void halfOnEachLeg() {
        CommissioningRecord record = Board.set("8 kVA", "240 V", PhaseSystem.SPLIT_PHASE);
        on(record, "A", "4 kW");
        judge(PhaseWithinRating.check(), record).meets().limit(4, "kVA", 1e-9);
        on(record, "both", "0.2 kW");
        judge(PhaseWithinRating.check(), record).fallsShort().measured(4.1, "kVA", 1e-9);
    }

    @Test
    void cannotTellWithoutInputs() {
        CommissioningRecord record = Installation.empty();
        judge(PhaseWithinRating.check(), record).cannotTell("generatorSet.phases", "acOutput.loads.power", "acOutput.loads.demandFactor");
    }

    @Test
    void doesNotApplyToASinglePhase() {
        CommissioningRecord record = Board.yacht();
        on(record, "L1", "20 kW");
        judge(PhaseWithinRating.check(), record).doesNotApply();
    }
}
