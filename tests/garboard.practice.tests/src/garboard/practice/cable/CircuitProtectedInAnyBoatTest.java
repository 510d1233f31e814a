// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CommissioningRecord;
import garboard.model.ProtectionKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class CircuitProtectedInAnyBoatTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    @ParameterizedTest
    @CsvSource({ "FUSE, MEETS", "CIRCUIT_BREAKER, MEETS", "NONE, FALLS_SHORT" }) // 33 CFR 183.455(a)
    void fuseOrBreaker(ProtectionKind protection, Standing standing) {
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        Wiring.add(record, CableFunction.CHARGING).setProtection(protection);
        judge(CircuitProtectedInAnyBoat.check(), record).is(standing);
    }

    @ParameterizedTest
    @EnumSource(names = { "CRANKING_POSITIVE", "CRANKING_NEGATIVE", "PARALLEL_LINK", "COMMON_NEGATIVE_LINK", "BONDING" })
    void doesNotApplyToCrankingAndGrounds(CableFunction function) {
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        Wiring.add(record, function).setProtection(ProtectionKind.NONE);
        judge(CircuitProtectedInAnyBoat.check(), record).doesNotApply();
    }

    @Test
    void cannotTellWithoutInputs() {
        Wiring.add(record, CableFunction.NOT_ENTERED);
        judge(CircuitProtectedInAnyBoat.check(), record).cannotTell("vessel.gasolineEngineAboard", "startingBattery.cables[0].function",
            "startingBattery.cables[0].protection");
    }

    @Test
    void doesNotApplyOnOtherBoats() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        Wiring.add(record, CableFunction.CHARGING).setProtection(ProtectionKind.NONE);
        judge(CircuitProtectedInAnyBoat.check(), record).doesNotApply();
    }

    @Test
    void leavesTheOutputCableToTheSwitchboard() {
        assertThat(Judged.all(CircuitProtectedInAnyBoat.check(), Installation.empty())).isEmpty();
    }
}
