// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.GaugePressure;

class ExhaustBackPressureDriftTest {

    private static CommissioningRecord drifted(String baseline, String now) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).setBaselineBackPressure(GaugePressure.valueOf(baseline));
        exhaust(record).setMeasuredBackPressure(GaugePressure.valueOf(now));
        return record;
    }

    // common practice: a rise of more than 25 %; baseline 4.0 kPa, action at 5.0
    @ParameterizedTest
    @CsvSource({ "4.0 kPa, 4.0 kPa, MEETS", "4.0 kPa, 5.0 kPa, MEETS", "4.0 kPa, 5.1 kPa, FALLS_SHORT", "4.0 kPa, 1.5 inHg, FALLS_SHORT",
            "4.0 kPa, 5.0 kPa ±0.1 kPa, BORDERLINE" })
    void allowsAQuarterOverTheBaseline(String baseline, String now, Standing expected) {
        judge(ExhaustBackPressureDrift.check(), drifted(baseline, now)).is(expected).limit(5.0, "kPa", 1e-9);
    }

    @Test
    void cannotTellWithoutReadingAndBaseline() {
        judge(ExhaustBackPressureDrift.check(), Installation.empty()).cannotTell("exhaust.measuredBackPressure", "exhaust.baselineBackPressure");
    }
}
