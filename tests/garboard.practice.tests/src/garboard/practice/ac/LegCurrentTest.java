// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.PhaseSystem;
import garboard.practice.testing.Judged;
import garboard.quantity.Current;
import garboard.quantity.Voltage;

class LegCurrentTest {

    private final CommissioningRecord record = Board.set("8 kVA", "240 V", PhaseSystem.SPLIT_PHASE);

    private Judged legs(String a, String b) {
        record.getAcOutput().setLegACurrent(Current.valueOf(a));
        record.getAcOutput().setLegBCurrent(Current.valueOf(b));
        return judge(LegCurrent.check(), record);
    }

    // Kirchhoff and S / (2 x 120 V): 8 kVA -> 33.3 A per leg; 45/33 A -> neutral 12 A, leg A 135 %
    @Test
    void halfOfTheSetOnEachLeg() {
        assertThat(legs("45 A", "33 A").fallsShort().limit(33.33, "A", 0.005).verdict().sentence()).contains("12 A");
        legs("20 A", "33.3 A").meets();
        legs("33.5 A", "0 A").fallsShort();
    }

    @Test
    void exactlyHalfOfTheSet() {
        Board.plate(record, "6 kVA", "240 V", PhaseSystem.SPLIT_PHASE);
        legs("25 A", "25 A").meets();
    }

    @Test
    void cannotTellWithoutInputs() {
        record.getGeneratorSet().setRatedApparentPower(null);
        record.getGeneratorSet().setRatedVoltage(null);
        judge(LegCurrent.check(), record).cannotTell("acOutput.legACurrent", "acOutput.legBCurrent", "generatorSet.ratedVoltage");
        legs("20 A", "20 A").cannotTell("generatorSet.ratedVoltage");
        record.getGeneratorSet().setRatedVoltage(Voltage.of(240, "V"));
        legs("20 A", "20 A").cannotTell("generatorSet.ratedPower", "generatorSet.ratedPowerFactor");
    }

    @Test
    void doesNotApplyToOtherSets() {
        record.getGeneratorSet().setPhases(PhaseSystem.THREE_PHASE);
        legs("45 A", "33 A").doesNotApply();
    }
}
