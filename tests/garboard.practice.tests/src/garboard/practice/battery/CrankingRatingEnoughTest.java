// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.BatteryChemistry;
import garboard.model.CommissioningRecord;
import garboard.model.CrankingRatingDefinition;
import garboard.model.MakerLimits;
import garboard.model.StartingBattery;
import garboard.practice.testing.Judged;
import garboard.quantity.Current;

class CrankingRatingEnoughTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();
    private final MakerLimits maker = record.getGeneratorSet().getMakerLimits();

    @BeforeEach
    void labelled() {
        battery.setCrankingRatingDefinition(CrankingRatingDefinition.CCA_SAE_J537);
    }

    private void crankedWith(String cranking, String label) {
        record.getGeneratorSet().setCrankingCurrent(Current.valueOf(cranking));
        battery.setBlockCrankingRating(Current.valueOf(label));
    }

    // recomputed from I (12.7 - 7.2) / (12.7 - 9.6): 300 A -> 532 A, 250 A -> 444 A; at 300 A a 700 A block holds 10.34 V, a 500 A block 9.40 V
    @ParameterizedTest
    @CsvSource({ "300 A, 700 A, 532, MEETS", "300 A, 500 A, 532, FALLS_SHORT", "300 A, 533 A, 532, MEETS", "300 A, 532 A, 532, FALLS_SHORT",
        "250 A, 444 A, 444, MEETS", "250 A, 443 A, 444, FALLS_SHORT", "0.3 kA, 0.7 kA, 532, MEETS" })
    void holdsNinePointSixVolts(String cranking, String label, double least, Standing standing) {
        crankedWith(cranking, label);
        judge(CrankingRatingEnough.check(), record).is(standing).limit(least, "A", 0.5);
    }

    @Test
    void stringsInParallelAddAndBlocksInSeriesDoNot() {
        crankedWith("900 A", "800 A");
        battery.setBlocksInSeries(2);
        battery.setStringsInParallel(2); // 2S2P of 800 A: 1600 A, recomputed; 900 A x 1.774 = 1597 A
        judge(CrankingRatingEnough.check(), record).meets().measured(1600, "A", 1e-6).limit(1597, "A", 0.5);
        battery.setStringsInParallel(1);
        judge(CrankingRatingEnough.check(), record).fallsShort().measured(800, "A", 1e-6);
    }

    @Test
    void makersFigureTakesThePlace() {
        crankedWith("300 A", "650 A");
        maker.setMinimumBatteryCcA(Current.of(700, "A"));
        maker.setBatteryCrankingDefinition(CrankingRatingDefinition.CCA_SAE_J537);
        judge(CrankingRatingEnough.check(), record).fallsShort().limitFromMaker().limit(700, "A", 1e-9);
        battery.setBlockCrankingRating(Current.of(700, "A"));
        judge(CrankingRatingEnough.check(), record).meets();
    }

    @Test
    void anotherTestOnTheLabelIsNeverAPass() {
        maker.setMinimumBatteryCcA(Current.of(700, "A"));
        maker.setBatteryCrankingDefinition(CrankingRatingDefinition.CCA_SAE_J537);
        battery.setCrankingRatingDefinition(CrankingRatingDefinition.CA_AT_0DEGREES);
        battery.setBlockCrankingRating(Current.of(800, "A"));
        Judged other = judge(CrankingRatingEnough.check(), record).cannotTell();
        assertThat(other.verdict().sentence()).contains("must not be converted");
        judge(CrankingRatingComparable.check(), record).fallsShort();
    }

    @Test
    void remedyIsTheNextBattery() {
        crankedWith("300 A", "500 A");
        judge(CrankingRatingEnough.check(), record).fallsShort().afterRemedy().meets();
        assertThat(battery.getBlockCrankingRating()).isEqualTo(Current.of(540, "A")); // 532 A, rounded up to 10 A
    }

    @Test
    void remedySharesAmongStrings() {
        crankedWith("600 A", "500 A");
        battery.setStringsInParallel(2);
        judge(CrankingRatingEnough.check(), record).fallsShort().afterRemedy().meets();
        assertThat(battery.getBlockCrankingRating()).isEqualTo(Current.of(540, "A")); // half of 1064 A, rounded up to 10 A
    }

    @Test
    void cannotTellWithoutTheCrankingCurrent() {
        battery.setBlockCrankingRating(Current.of(700, "A"));
        judge(CrankingRatingEnough.check(), record).cannotTell("generatorSet.crankingCurrent");
    }

    @Test
    void cannotTellWithoutTheMakersTest() {
        battery.setBlockCrankingRating(Current.of(700, "A"));
        maker.setMinimumBatteryCcA(Current.of(700, "A"));
        judge(CrankingRatingEnough.check(), record).cannotTell("generatorSet.makerLimits.batteryCrankingDefinition");
    }

    @Test
    void doesNotApplyToLithium() {
        battery.setChemistry(BatteryChemistry.LITHIUM_IRON_PHOSPHATE);
        judge(CrankingRatingEnough.check(), record).doesNotApply();
    }
}
