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
import garboard.quantity.Ratio;

class ExhaustBackPressureLoadTest {

    private static CommissioningRecord measuredAt(String load) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).setMeasuredBackPressure(GaugePressure.valueOf("5 kPa"));
        exhaust(record).setMeasuredBackPressureLoad(Ratio.valueOf(load));
        return record;
    }

    // common practice: at rated load
    @ParameterizedTest
    @CsvSource({ "100 %, MEETS", "105 %, MEETS", "75 %, FALLS_SHORT", "99 % ±2 %, BORDERLINE" })
    void wantsRatedLoad(String load, Standing expected) {
        judge(ExhaustBackPressureLoad.check(), measuredAt(load)).is(expected);
    }

    @Test
    void cannotTellWithoutReadingAndLoad() {
        judge(ExhaustBackPressureLoad.check(), Installation.empty()).cannotTell("exhaust.measuredBackPressure", "exhaust.measuredBackPressureLoad");
    }
}
