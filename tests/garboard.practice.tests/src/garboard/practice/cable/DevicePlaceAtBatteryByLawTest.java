// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.model.CommissioningRecord;
import garboard.model.ProtectionKind;
import garboard.quantity.Length;

class DevicePlaceAtBatteryByLawTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        run.setProtection(ProtectionKind.CIRCUIT_BREAKER);
        run.setConnectedToBatteryTerminal(Answer.YES);
    }

    // 33 CFR 183.460(a) (from memory): 72 in
    @ParameterizedTest
    @CsvSource({ "72 in, MEETS", "6 ft, MEETS", "1828.8 mm, MEETS", "73 in, FALLS_SHORT", "1.9 m, FALLS_SHORT" })
    void closeToTheBattery(String distance, Standing standing) {
        run.setProtectionDistanceFromSource(Length.valueOf(distance));
        judge(DevicePlaceAtBatteryByLaw.check(), record).is(standing);
    }

    @Test
    void remedyMovesItCloser() {
        run.setProtectionDistanceFromSource(Length.of(3, "m"));
        judge(DevicePlaceAtBatteryByLaw.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheDistance() {
        judge(DevicePlaceAtBatteryByLaw.check(), record).cannotTell("startingBattery.cables[0].protectionDistanceFromSource");
    }

    @Test
    void doesNotApplyToTheCrankingCircuitAwayFromTheBatteryOrWithoutGasoline() {
        run.setConnectedToBatteryTerminal(Answer.NO);
        judge(DevicePlaceAtBatteryByLaw.check(), record).doesNotApply();
        run.setConnectedToBatteryTerminal(Answer.YES);
        run.setFunction(CableFunction.CRANKING_POSITIVE);
        judge(DevicePlaceAtBatteryByLaw.check(), record).doesNotApply();
        run.setFunction(CableFunction.OTHER_DC);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(DevicePlaceAtBatteryByLaw.check(), record).doesNotApply();
    }
}
