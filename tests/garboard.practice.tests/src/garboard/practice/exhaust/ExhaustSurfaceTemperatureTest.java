// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Temperature;

class ExhaustSurfaceTemperatureTest {

    private static CommissioningRecord surface(Answer lagged, String temperature) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).setDryPartsLagged(lagged);
        exhaust(record).setDryPartSurfaceTemperature(Temperature.valueOf(temperature));
        return record;
    }

    // ABYC P-1, from memory: 93 degC (200 degF) where it can be touched
    @ParameterizedTest
    @CsvSource({ "NO, 93 degC, MEETS", "NO, 200 degF, MEETS", "NO, 94 degC, FALLS_SHORT", "NO, 201 degF, FALLS_SHORT", "YES, 400 degC, MEETS",
            "NOT_APPLICABLE, 400 degC, DOES_NOT_APPLY" })
    void bareMetalIsNotHotToTheTouch(Answer lagged, String temperature, Standing expected) {
        judge(ExhaustSurfaceTemperature.check(), surface(lagged, temperature)).is(expected);
    }

    @Test
    void cannotTellWithoutLaggingOrTemperature() {
        judge(ExhaustSurfaceTemperature.check(), Installation.empty()).cannotTell("exhaust.dryPartsLagged");
        CommissioningRecord bare = surface(Answer.NO, "70 degC");
        exhaust(bare).setDryPartSurfaceTemperature(null);
        judge(ExhaustSurfaceTemperature.check(), bare).cannotTell("exhaust.dryPartSurfaceTemperature");
    }
}
