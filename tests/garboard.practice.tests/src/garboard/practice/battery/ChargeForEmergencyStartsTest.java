// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Charge;
import garboard.quantity.Current;

class ChargeForEmergencyStartsTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @BeforeEach
    void emergencySet() {
        battery.setEmergencySource(Answer.YES);
        record.getGeneratorSet().setCrankingCurrent(Current.of(300, "A"));
    }

    // 46 CFR 112.50-1(k): six starts; 10 s each out of 20 %: common practice
    @ParameterizedTest
    @CsvSource({ "25 Ah, MEETS", "24 Ah, FALLS_SHORT" })
    void sixStarts(String capacity, Standing standing) {
        battery.setBlockCapacity(Charge.valueOf(capacity));
        judge(ChargeForEmergencyStarts.check(), record).is(standing);
    }

    @Test
    void makersFigureDoesNotReplaceIt() {
        record.getGeneratorSet().getMakerLimits().setMinimumBatteryCapacity(Charge.of(10, "Ah"));
        battery.setBlockCapacity(Charge.of(20, "Ah"));
        judge(ChargeForEmergencyStarts.check(), record).fallsShort().limit(25, "Ah", 1e-6).afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheAnswer() {
        battery.setEmergencySource(Answer.UNANSWERED);
        battery.setBlockCapacity(Charge.of(60, "Ah"));
        judge(ChargeForEmergencyStarts.check(), record).cannotTell("startingBattery.emergencySource");
    }

    @Test
    void doesNotApplyToOtherSets() {
        battery.setEmergencySource(Answer.NO);
        judge(ChargeForEmergencyStarts.check(), record).doesNotApply();
    }
}
