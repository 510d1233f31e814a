// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;
import garboard.model.ProtectionKind;
import garboard.practice.testing.Installation;

class PolesOpenTogetherTest {

    private final CommissioningRecord record = Installation.empty();

    private void breaker(int poles, PhaseSystem phases, NeutralBond bond) {
        record.getAcOutput().setProtectionDevice(ProtectionKind.CIRCUIT_BREAKER);
        record.getAcOutput().setProtectionPoles(poles);
        record.getGeneratorSet().setPhases(phases);
        record.getAcOutput().setNeutralBond(bond);
    }

    // 46 CFR 28.860(d) as a yardstick: all ungrounded conductors open together
    @ParameterizedTest
    @CsvSource({ "1, SINGLE_PHASE, AT_GENERATOR, MEETS", "1, SINGLE_PHASE, NONE, FALLS_SHORT", "2, SINGLE_PHASE, NONE, MEETS",
        "1, SPLIT_PHASE, AT_GENERATOR, FALLS_SHORT", "2, SPLIT_PHASE, AT_GENERATOR, MEETS", "2, THREE_PHASE, AT_SWITCHBOARD, FALLS_SHORT",
        "3, THREE_PHASE, AT_SWITCHBOARD, MEETS", "4, THREE_PHASE, AT_SWITCHBOARD, MEETS" })
    void aPoleForEachLiveConductor(int poles, PhaseSystem phases, NeutralBond bond, Standing standing) {
        breaker(poles, phases, bond);
        judge(PolesOpenTogether.check(), record).is(standing);
    }

    @Test
    void remedyIsABreakerWithMorePoles() {
        breaker(1, PhaseSystem.THREE_PHASE, NeutralBond.AT_SWITCHBOARD);
        judge(PolesOpenTogether.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getProtectionPoles()).isEqualTo(3);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(PolesOpenTogether.check(), record).cannotTell("acOutput.protectionDevice", "acOutput.protectionPoles", "generatorSet.phases",
            "acOutput.neutralBond");
    }

    @Test
    void doesNotApplyWithoutADevice() {
        record.getAcOutput().setProtectionDevice(ProtectionKind.NONE);
        judge(PolesOpenTogether.check(), record).doesNotApply();
    }
}
