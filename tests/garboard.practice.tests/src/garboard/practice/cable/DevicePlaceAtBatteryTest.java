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

class DevicePlaceAtBatteryTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final CableRun run = Wiring.add(record, CableFunction.OTHER_DC);

    @BeforeEach
    void applies() {
        run.setProtection(ProtectionKind.FUSE);
        run.setConnectedToBatteryTerminal(Answer.YES);
    }

    // ABYC E-11 (quoted): 72 in from a battery terminal when sheathed; 7 in without a sheath: 33 CFR 183.455(b)
    @ParameterizedTest
    @CsvSource({ "7 in, UNANSWERED, MEETS", "8 in, NO, FALLS_SHORT", "72 in, YES, MEETS", "1.8288 m, YES, MEETS", "73 in, YES, FALLS_SHORT" })
    void closeToTheBattery(String distance, Answer sheathed, Standing standing) {
        run.setProtectionDistanceFromSource(Length.valueOf(distance));
        run.setSheathedToProtection(sheathed);
        judge(DevicePlaceAtBattery.check(), record).is(standing);
    }

    @Test
    void remedyMovesItCloser() {
        run.setProtectionDistanceFromSource(Length.of(3, "m"));
        run.setSheathedToProtection(Answer.YES);
        judge(DevicePlaceAtBattery.check(), record).fallsShort().afterRemedy().meets();
        assertThat(run.getProtectionDistanceFromSource()).isEqualTo(Length.of(1820, "mm")); // 72 in, rounded down to 10 mm
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(DevicePlaceAtBattery.check(), record).cannotTell("startingBattery.cables[0].protectionDistanceFromSource");
        run.setProtectionDistanceFromSource(Length.of(1, "m"));
        judge(DevicePlaceAtBattery.check(), record).cannotTell("startingBattery.cables[0].sheathedToProtection");
    }

    @Test
    void doesNotApplyAwayFromTheBattery() {
        run.setConnectedToBatteryTerminal(Answer.NO);
        judge(DevicePlaceAtBattery.check(), record).doesNotApply();
    }
}
