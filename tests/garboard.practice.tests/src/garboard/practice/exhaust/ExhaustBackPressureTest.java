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

class ExhaustBackPressureTest {

    private static CommissioningRecord measured(Aspiration aspiration, String pressure) {
        CommissioningRecord record = Installation.empty();
        record.getGeneratorSet().setAspiration(aspiration);
        exhaust(record).setMeasuredBackPressure(GaugePressure.valueOf(pressure));
        return record;
    }

    // Gerr, Boat Mechanical Systems Handbook: 2.5 inHg = 8.466 kPa (34 inH2O) naturally aspirated, 2.0 inHg = 6.77 kPa turbocharged
    @ParameterizedTest
    @CsvSource({ "NATURALLY_ASPIRATED, 2.5 inHg, 8.466, MEETS", "NATURALLY_ASPIRATED, 8.46 kPa, 8.466, MEETS",
            "NATURALLY_ASPIRATED, 8.47 kPa, 8.466, FALLS_SHORT", "NATURALLY_ASPIRATED, 33.9 inH2O, 8.466, MEETS",
            "NATURALLY_ASPIRATED, 1.5 psi, 8.466, FALLS_SHORT", "NATURALLY_ASPIRATED, 3 inHg, 8.466, FALLS_SHORT",
            "TURBOCHARGED, 2.0 inHg, 6.773, MEETS",
            "TURBOCHARGED, 6.8 kPa, 6.773, FALLS_SHORT", "TURBOCHARGED_CHARGE_AIR_COOLED, 1.5 inHg, 6.773, MEETS",
            "NATURALLY_ASPIRATED, 8.4 kPa ±0.2 kPa, 8.466, BORDERLINE" })
    void holdsTheReadingAgainstTheAspiration(Aspiration aspiration, String pressure, double limit, Standing expected) {
        judge(ExhaustBackPressure.check(), measured(aspiration, pressure)).is(expected).limit(limit, "kPa", 0.0005);
    }

    @Test
    void theMakersLimitTakesThePlaceOfTheHandbooksAndNeedsNoAspiration() {
        // 3 inHg = 10.159 kPa
        CommissioningRecord record = measured(Aspiration.NOT_ENTERED, "10 kPa");
        record.getGeneratorSet().getMakerLimits().setMaximumBackPressure(GaugePressure.valueOf("3 inHg"));
        judge(ExhaustBackPressure.check(), record).meets().limitFromMaker().limit(10.159, "kPa", 0.0005);
    }

    @Test
    void cannotTellWithoutReadingOrAspiration() {
        judge(ExhaustBackPressure.check(), Installation.empty()).cannotTell("exhaust.measuredBackPressure");
        judge(ExhaustBackPressure.check(), measured(Aspiration.NOT_ENTERED, "5 kPa")).cannotTell("generatorSet.aspiration");
    }
}
