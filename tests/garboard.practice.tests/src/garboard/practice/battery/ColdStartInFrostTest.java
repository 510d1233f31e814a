// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

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

class ColdStartInFrostTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @BeforeEach
    void labelled() {
        battery.setCrankingRatingDefinition(CrankingRatingDefinition.CCA_SAE_J537);
        record.getGeneratorSet().setCrankingCurrent(Current.of(300, "A"));
    }

    // common practice, engine demand over battery output: -18 degC 210/40 = 5.25, -29 degC 350/25 = 14.0.
    // 700 A CCA is a figure at -18 degC: warm it is 700 A / 40 % = 1750 A, 5.83 times 300 A; reducing it again would call for 1575 A CCA.
    @ParameterizedTest
    @CsvSource({ "-18 degC, 700 A, 5.25, MEETS", "-0.4 degF, 700 A, 5.25, MEETS", "-18 degC, 630 A, 5.25, MEETS",
        "-18 degC, 629 A, 5.25, FALLS_SHORT",
        "-29 degC, 700 A, 14.0, FALLS_SHORT", "-29 degC, 1680 A, 14.0, MEETS" })
    void coversTheCold(String coldest, String label, double ratio, Standing standing) {
        battery.setColdestStart(Temperature.valueOf(coldest));
        battery.setBlockCrankingRating(Current.valueOf(label));
        judge(ColdStartInFrost.check(), record).is(standing).limit(ratio, "1", 0.005);
    }

    @Test
    void fallsShortBeyondThePublishedFigures() {
        battery.setColdestStart(Temperature.of(-29.5, "degC"));
        battery.setBlockCrankingRating(Current.of(5000, "A"));
        assertThat(judge(ColdStartInFrost.check(), record).fallsShort().verdict().sentence()).contains("-29 degC");
    }

    @Test
    void remedyIsALargerBattery() {
        battery.setColdestStart(Temperature.of(-18, "degC"));
        battery.setBlockCrankingRating(Current.of(500, "A"));
        judge(ColdStartInFrost.check(), record).fallsShort().afterRemedy().meets();
        assertThat(battery.getBlockCrankingRating()).isEqualTo(Current.of(630, "A")); // 210 % of 300 A
    }

    @Test
    void stringsInParallelAdd() {
        battery.setColdestStart(Temperature.of(-18, "degC"));
        battery.setBlockCrankingRating(Current.of(315, "A"));
        judge(ColdStartInFrost.check(), record).fallsShort();
        battery.setStringsInParallel(2);
        judge(ColdStartInFrost.check(), record).meets();
    }

    @Test
    void cannotTellWithoutTheColdestStart() {
        battery.setBlockCrankingRating(Current.of(700, "A"));
        judge(ColdStartInFrost.check(), record).cannotTell("startingBattery.coldestStart");
    }

    @Test
    void doesNotApplyWithoutFrostOrWithAnotherRating() {
        battery.setColdestStart(Temperature.of(0, "degC"));
        judge(ColdStartInFrost.check(), record).doesNotApply();
        battery.setColdestStart(Temperature.of(-10, "degC"));
        battery.setCrankingRatingDefinition(CrankingRatingDefinition.CA_AT_0DEGREES);
        judge(ColdStartInFrost.check(), record).doesNotApply();
    }
}
