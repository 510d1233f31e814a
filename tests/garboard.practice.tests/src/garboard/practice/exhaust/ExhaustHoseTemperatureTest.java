// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.practice.testing.Installation;
import garboard.quantity.Temperature;

class ExhaustHoseTemperatureTest {

    private static CommissioningRecord hot(ExhaustHoseStandard standard, String temperature) {
        CommissioningRecord record = Installation.empty();
        ExhaustSectionRun run = add(record, ExhaustSection.INJECTION_TO_MUFFLER);
        run.setStandard(standard);
        run.setGasTemperature(Temperature.valueOf(temperature));
        return record;
    }

    // common practice: rubber hose to about 121 degC (250 degF)
    @ParameterizedTest
    @CsvSource({ "SAE_J2006, 121 degC, MEETS", "SAE_J2006, 250 degF, MEETS", "SAE_J2006, 122 degC, FALLS_SHORT", "UNMARKED, 60 degC, MEETS",
            "METAL_PIPE, 300 degC, DOES_NOT_APPLY" })
    void rubberStandsTwoHundredAndFiftyFahrenheit(ExhaustHoseStandard standard, String temperature, Standing expected) {
        judge(ExhaustHoseTemperature.check(), hot(standard, temperature)).is(expected);
    }

    @Test
    void cannotTellWithoutTheTemperature() {
        CommissioningRecord record = hot(ExhaustHoseStandard.SAE_J2006, "60 degC");
        exhaust(record).getSections().getFirst().setGasTemperature(null);
        judge(ExhaustHoseTemperature.check(), record).cannotTell("exhaust.sections[run-1].gasTemperature");
    }
}
