// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

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

class DevicePlaceByLawTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void applies() {
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        run.setProtection(ProtectionKind.FUSE);
        run.setConnectedToBatteryTerminal(Answer.NO);
    }

    // 33 CFR 183.455(b): 7 in, or 40 in sheathed all the way
    @ParameterizedTest
    @CsvSource({ "0 in, UNANSWERED, MEETS", "7 in, UNANSWERED, MEETS", "177.8 mm, UNANSWERED, MEETS", "9 in, NO, FALLS_SHORT", "9 in, YES, MEETS",
        "40 in, YES, MEETS", "1.016 m, YES, MEETS", "41 in, YES, FALLS_SHORT", "3 ft 5 in, YES, FALLS_SHORT" })
    void closeToTheSource(String distance, Answer sheathed, Standing standing) {
        run.setProtectionDistanceFromSource(Length.valueOf(distance));
        run.setSheathedToProtection(sheathed);
        judge(DevicePlaceByLaw.check(), record).is(standing);
    }

    @Test
    void remedyMovesItCloser() {
        run.setProtectionDistanceFromSource(Length.of(500, "mm"));
        run.setSheathedToProtection(Answer.NO);
        judge(DevicePlaceByLaw.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getProtectionDistanceFromSource()).isEqualTo(Length.of(170, "mm")); // 7 in, rounded down to 10 mm
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(DevicePlaceByLaw.check(), record).cannotTell("startingBattery.cables[0].protectionDistanceFromSource");
        run.setProtectionDistanceFromSource(Length.of(9, "in"));
        judge(DevicePlaceByLaw.check(), record).cannotTell("startingBattery.cables[0].sheathedToProtection");
    }

    @Test
    void doesNotApplyAtABatteryWithoutADeviceOrOnOtherBoats() {
        run.setConnectedToBatteryTerminal(Answer.YES);
        judge(DevicePlaceByLaw.check(), record).doesNotApply();
        run.setConnectedToBatteryTerminal(Answer.NO);
        run.setProtection(ProtectionKind.NONE);
        judge(DevicePlaceByLaw.check(), record).doesNotApply();
        run.setProtection(ProtectionKind.FUSE);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(DevicePlaceByLaw.check(), record).doesNotApply();
    }
}
