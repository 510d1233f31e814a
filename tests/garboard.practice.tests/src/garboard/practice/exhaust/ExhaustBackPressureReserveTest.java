// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Aspiration;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.GaugePressure;

class ExhaustBackPressureReserveTest {

    private static CommissioningRecord measured(String pressure) {
        CommissioningRecord record = Installation.empty();
        record.getGeneratorSet().setAspiration(Aspiration.NATURALLY_ASPIRATED);
        exhaust(record).setMeasuredBackPressure(GaugePressure.valueOf(pressure));
        return record;
    }

    // common practice: three quarters of the limit; 0.75 x 2.5 inHg = 1.875 inHg
    @ParameterizedTest
    @CsvSource({ "1.875 inHg, MEETS", "1.9 inHg, FALLS_SHORT", "6.3 kPa, MEETS", "6.4 kPa, FALLS_SHORT" })
    void keepsAQuarterInReserve(String pressure, Standing expected) {
        judge(ExhaustBackPressureReserve.check(), measured(pressure)).is(expected).limit(1.875, "inHg", 1e-9);
    }

    @Test
    void takesTheReserveFromTheMakersLimit() {
        CommissioningRecord record = measured("7 kPa");
        record.getGeneratorSet().getMakerLimits().setMaximumBackPressure(GaugePressure.valueOf("10 kPa"));
        judge(ExhaustBackPressureReserve.check(), record).meets().limit(7.5, "kPa", 1e-9);
    }

    @Test
    void cannotTellWithoutReadingOrAspiration() {
        judge(ExhaustBackPressureReserve.check(), Installation.empty()).cannotTell("exhaust.measuredBackPressure");
        CommissioningRecord record = measured("5 kPa");
        record.getGeneratorSet().setAspiration(Aspiration.NOT_ENTERED);
        judge(ExhaustBackPressureReserve.check(), record).cannotTell("generatorSet.aspiration");
    }
}
