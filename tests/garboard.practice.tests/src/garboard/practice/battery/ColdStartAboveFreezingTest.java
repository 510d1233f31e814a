// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.CrankingRatingDefinition;
import garboard.model.StartingBattery;
import garboard.quantity.Current;
import garboard.quantity.Temperature;

class ColdStartAboveFreezingTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @BeforeEach
    void labelled() {
        battery.setCrankingRatingDefinition(CrankingRatingDefinition.CCA_SAE_J537);
        record.getGeneratorSet().setCrankingCurrent(Current.of(300, "A"));
    }

    // common practice, engine demand over battery output: 0 degC 155/65 = 2.38, 27 degC 100/100; 700 A CCA is 1750 A warm
    @ParameterizedTest
    @CsvSource({ "0 degC, 700 A, 2.38, MEETS", "32 degF, 286 A, 2.38, FALLS_SHORT", "0 degC, 287 A, 2.38, MEETS", "27 degC, 120 A, 1.00, MEETS",
        "35 degC, 120 A, 1.00, MEETS", "27 degC, 119 A, 1.00, FALLS_SHORT" })
    void coversTheCold(String coldest, String label, double ratio, Standing standing) {
        battery.setColdestStart(Temperature.valueOf(coldest));
        battery.setBlockCrankingRating(Current.valueOf(label));
        judge(ColdStartAboveFreezing.check(), record).is(standing).limit(ratio, "1", 0.005);
    }

    @Test
    void remedyIsALargerBattery() {
        battery.setColdestStart(Temperature.of(0, "degC"));
        battery.setBlockCrankingRating(Current.of(200, "A"));
        judge(ColdStartAboveFreezing.check(), record).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheColdestStart() {
        battery.setBlockCrankingRating(Current.of(700, "A"));
        judge(ColdStartAboveFreezing.check(), record).cannotTell("startingBattery.coldestStart");
    }

    @Test
    void doesNotApplyInFrost() {
        battery.setColdestStart(Temperature.of(-0.01, "degC"));
        judge(ColdStartAboveFreezing.check(), record).doesNotApply();
    }
}
