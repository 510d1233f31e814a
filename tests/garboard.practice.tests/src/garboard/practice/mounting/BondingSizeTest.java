// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class BondingSizeTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged conductor(String size) {
        record.getMounting().setBondingConductor(size);
        return judge(BondingSize.check(), record);
    }

    @ParameterizedTest
    @CsvSource({ "8 AWG, MEETS", "10 AWG, FALLS_SHORT", "10 mm2, MEETS", "6 mm2, FALLS_SHORT", "6 AWG, MEETS" }) // ABYC from memory: 8 AWG (8.4 mm2)
    void atLeastEightGauge(String size, Standing standing) {
        conductor(size).is(standing).limit(8.37, "mm2", 0.005);
    }

    @ParameterizedTest
    @CsvSource({ "6 mm2, 10 mm2", "12 AWG, 8 AWG" })
    void remedyIsTheNextSizeOfTheSameKind(String size, String next) {
        conductor(size).fallsShort().afterRemedy().meets();
        assertThat(record.getMounting().getBondingConductor()).isEqualTo(next);
    }

    @Test
    void cannotTellWhatIsMissingOrCannotBeRead() {
        judge(BondingSize.check(), record).cannotTell("mounting.bondingConductor");
        conductor("copper strap").cannotTell();
    }

    @Test
    void stepsBackWhereTheSetIsNotBonded() {
        record.getMounting().setBondedToCommonGround(Answer.NO);
        conductor("10 AWG").doesNotApply();
    }
}
