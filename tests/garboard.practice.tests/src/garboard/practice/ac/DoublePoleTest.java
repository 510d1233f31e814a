// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;

class DoublePoleTest {

    private final CommissioningRecord record = Board.yacht();

    private void breaker(int poles, NeutralBond bond) {
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
        record.getAcOutput().setProtectionPoles(poles);
        record.getAcOutput().setNeutralBond(bond);
    }

    @ParameterizedTest
    @CsvSource({ "1, FALLS_SHORT", "2, MEETS", "3, MEETS" }) // ISO 13297 13.2.1 as quoted: double pole
    void twoPoles(int poles, Standing standing) {
        breaker(poles, NeutralBond.AT_GENERATOR);
        judge(DoublePole.check(), record).is(standing);
    }

    @Test
    void remedyIsADoublePoleBreaker() {
        breaker(1, NeutralBond.AT_GENERATOR);
        judge(DoublePole.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(DoublePole.check(), record).cannotTell("acOutput.protectionDevice", "acOutput.neutralBond", "acOutput.protectionPoles");
    }

    @Test
    void doesNotApplyWhereTwoConductorsAreLiveAnyway() {
        breaker(1, NeutralBond.NONE);
        judge(DoublePole.check(), record).doesNotApply();
        breaker(1, NeutralBond.AT_GENERATOR);
        record.getGeneratorSet().setPhases(PhaseSystem.SPLIT_PHASE);
        judge(DoublePole.check(), record).doesNotApply();
        record.getGeneratorSet().setPhases(PhaseSystem.THREE_PHASE);
        judge(DoublePole.check(), record).doesNotApply();
    }
}
