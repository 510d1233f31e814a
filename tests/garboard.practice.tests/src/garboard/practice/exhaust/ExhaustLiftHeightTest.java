// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.quantity.Length;

class ExhaustLiftHeightTest {

    private static CommissioningRecord lift(String height) {
        CommissioningRecord record = liftMuffler();
        exhaust(record).getRiser().setLiftHeight(Length.valueOf(height));
        return record;
    }

    // Gerr, Boat Mechanical Systems Handbook: 42 in (1.07 m)
    @ParameterizedTest
    @CsvSource({ "42 in, MEETS", "1066 mm, MEETS", "1070 mm, FALLS_SHORT", "43 in, FALLS_SHORT", "4 ft, FALLS_SHORT", "0.9 m, MEETS" })
    void allowsFortyTwoInches(String height, Standing expected) {
        judge(ExhaustLiftHeight.check(), lift(height)).is(expected).limit(42, "in", 0);
    }

    // rho g h at 1025 kg/m3, recomputed independently
    @ParameterizedTest
    @CsvSource({ "0.60 m, 6.03 kPa (1.78 inHg)", "0.90 m, 9.05 kPa (2.67 inHg)", "1.067 m, 10.7 kPa (3.17 inHg)", "1.20 m, 12.1 kPa (3.56 inHg)" })
    void tellsWhatTheColumnWeighs(String height, String column) {
        assertThat(judge(ExhaustLiftHeight.check(), lift(height)).verdict().sentence()).contains(column);
    }

    @Test
    void theMakersHeightTakesThePlaceOfTheHandbooks() {
        CommissioningRecord record = lift("1.2 m");
        record.getGeneratorSet().getMakerLimits().setMaximumLiftHeight(Length.valueOf("4 ft"));
        judge(ExhaustLiftHeight.check(), record).meets().limitFromMaker();
        exhaust(record).getRiser().setLiftHeight(Length.valueOf("1.5 m"));
        judge(ExhaustLiftHeight.check(), record).fallsShort().limitFromMaker().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithoutALiftMuffler() {
        judge(ExhaustLiftHeight.check(), muffler(MufflerKind.GAS_WATER_SEPARATOR)).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheLift() {
        judge(ExhaustLiftHeight.check(), liftMuffler()).cannotTell("exhaust.riser.liftHeight");
    }
}
