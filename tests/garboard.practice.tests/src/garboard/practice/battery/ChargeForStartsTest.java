// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Charge;
import garboard.quantity.Current;

class ChargeForStartsTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    // common practice: 6 x 10 s x 300 A = 5.0 Ah, which is 20 % of 25 Ah
    @ParameterizedTest
    @CsvSource({ "300 A, 25 Ah, 25, MEETS", "300 A, 25000 mAh, 25, MEETS", "300 A, 24.9 Ah, 25, FALLS_SHORT", "600 A, 40 Ah, 50, FALLS_SHORT" })
    void sixStarts(String cranking, String capacity, double least, Standing standing) {
        record.getGeneratorSet().setCrankingCurrent(Current.valueOf(cranking));
        battery.setBlockCapacity(Charge.valueOf(capacity));
        judge(ChargeForStarts.check(), record).is(standing).limit(least, "Ah", 1e-6);
    }

    @Test
    void chargeOfABank() {
        record.getGeneratorSet().setCrankingCurrent(Current.of(300, "A"));
        battery.setBlockCapacity(Charge.of(100, "Ah"));
        battery.setBlocksInSeries(2);
        battery.setStringsInParallel(2);
        judge(ChargeForStarts.check(), record).meets().measured(200, "Ah", 1e-9); // 2S2P of 100 Ah: 200 Ah
    }

    @Test
    void makersFigureTakesThePlace() {
        record.getGeneratorSet().getMakerLimits().setMinimumBatteryCapacity(Charge.of(70, "Ah"));
        battery.setBlockCapacity(Charge.of(60, "Ah"));
        judge(ChargeForStarts.check(), record).fallsShort().limitFromMaker().afterRemedy().meets();
        assertThat(battery.getBlockCapacity()).isEqualTo(Charge.of(70, "Ah"));
    }

    @Test
    void remedyRoundsUpToFiveAmpereHours() {
        record.getGeneratorSet().setCrankingCurrent(Current.of(310, "A"));
        battery.setBlockCapacity(Charge.of(20, "Ah"));
        judge(ChargeForStarts.check(), record).fallsShort().afterRemedy().meets();
        assertThat(battery.getBlockCapacity()).isEqualTo(Charge.of(30, "Ah")); // 25.8 Ah
    }

    @Test
    void aBankOfNoStringsCannotBe() {
        record.getGeneratorSet().setCrankingCurrent(Current.of(300, "A"));
        battery.setBlockCapacity(Charge.of(100, "Ah"));
        battery.setStringsInParallel(0);
        assertThat(judge(ChargeForStarts.check(), record).cannotTell().verdict().sentence()).contains("strings in parallel");
    }

    @Test
    void cannotTellWithoutTheCrankingCurrent() {
        battery.setBlockCapacity(Charge.of(60, "Ah"));
        judge(ChargeForStarts.check(), record).cannotTell("generatorSet.crankingCurrent");
    }

    @Test
    void doesNotApplyToEmergencySets() {
        battery.setEmergencySource(Answer.YES);
        judge(ChargeForStarts.check(), record).doesNotApply();
    }
}
