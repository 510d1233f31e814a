// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.exhaust.ExhaustFixture.muffler;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.MufflerKind;
import garboard.quantity.GaugePressure;
import garboard.quantity.Length;

class ExhaustSeparatorHeightTest {

    private static CommissioningRecord separator(String height, String pressure) {
        CommissioningRecord record = muffler(MufflerKind.GAS_WATER_SEPARATOR);
        exhaust(record).getSeparatorDrain().setBaseHeight(Length.valueOf(height));
        exhaust(record).getSeparatorDrain().setGasSidePressure(GaugePressure.valueOf(pressure));
        return record;
    }

    // p / (rho g) at 1025 kg/m3: 1.0 kPa 0.0995 m, 2.0 kPa 0.199 m, 3.0 kPa 0.298 m, recomputed independently; 0.15 m margin: common practice
    @ParameterizedTest
    @CsvSource({ "250 mm, 1.0 kPa, 0.2495, 0.00005, MEETS", "249 mm, 1.0 kPa, 0.2495, 0.00005, FALLS_SHORT", "350 mm, 2.0 kPa, 0.349, 0.0005, MEETS",
            "340 mm, 2.0 kPa, 0.349, 0.0005, FALLS_SHORT", "450 mm, 3.0 kPa, 0.448, 0.0005, MEETS", "17 in, 3.0 kPa, 0.448, 0.0005, FALLS_SHORT" })
    void standsByTheGasPressureAsAColumn(String height, String pressure, double limit, double half, Standing expected) {
        judge(ExhaustSeparatorHeight.check(), separator(height, pressure)).is(expected).limit(limit, "m", half);
    }

    @Test
    void meetsExactlyAtTheLimit() {
        judge(ExhaustSeparatorHeight.check(), separator("150 mm", "0 kPa")).meets();
    }

    @Test
    void theRaisedSeparatorMeets() {
        judge(ExhaustSeparatorHeight.check(), separator("100 mm", "2.5 kPa")).fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyWithoutASeparator() {
        judge(ExhaustSeparatorHeight.check(), liftMuffler()).doesNotApply();
    }

    @Test
    void cannotTellWithoutHeightAndPressure() {
        judge(ExhaustSeparatorHeight.check(), muffler(MufflerKind.COMBINED_LIFT_AND_SEPARATOR)).cannotTell("exhaust.separatorDrain.baseHeight",
            "exhaust.separatorDrain.gasSidePressure");
    }
}
