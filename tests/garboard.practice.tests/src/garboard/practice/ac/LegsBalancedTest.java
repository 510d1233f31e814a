// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.practice.testing.Judged;
import garboard.quantity.Current;

class LegsBalancedTest {

    private final CommissioningRecord record = Board.set("12 kVA", "240 V", PhaseSystem.SPLIT_PHASE);

    private Judged legs(String a, String b) {
        record.getAcOutput().setLegACurrent(Current.valueOf(a));
        record.getAcOutput().setLegBCurrent(Current.valueOf(b));
        return judge(LegsBalanced.check(), record);
    }

    // (I max - I min) / I max: 45/33 A -> 26.7 %; common practice: 25 %
    @Test
    void atMostAQuarter() {
        legs("45 A", "33 A").fallsShort().measured(26.67, "%", 0.005);
        legs("30 A", "40 A").meets().measured(25, "%", 1e-9);
        legs("0 A", "0 A").meets();
    }

    @Test
    void stepsBackWhereALegIsOverloaded() {
        legs("60 A", "33 A").doesNotApply(); // 12 kVA give 50 A on each leg
    }

    @Test
    void theRatingIsNotNeeded() {
        record.getGeneratorSet().setRatedApparentPower(null);
        legs("60 A", "33 A").fallsShort();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(LegsBalanced.check(), record).cannotTell("acOutput.legACurrent", "acOutput.legBCurrent");
    }

    @Test
    void doesNotApplyToOtherSets() {
        record.getGeneratorSet().setPhases(PhaseSystem.SINGLE_PHASE);
        legs("45 A", "33 A").doesNotApply();
    }
}
