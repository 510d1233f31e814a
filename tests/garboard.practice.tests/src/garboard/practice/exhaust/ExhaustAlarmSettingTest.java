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

class ExhaustAlarmSettingTest {

    private static CommissioningRecord alarm(Answer fitted, String setting) {
        CommissioningRecord record = Installation.empty();
        exhaust(record).setTemperatureAlarm(fitted);
        exhaust(record).setTemperatureAlarmSetting(Temperature.valueOf(setting));
        return record;
    }

    // marine trade press: strap-on sensor near 74 degC (165 degF)
    @ParameterizedTest
    @CsvSource({ "YES, 74 degC, MEETS", "YES, 165 degF, MEETS", "YES, 75 degC, FALLS_SHORT", "YES, 167 degF, FALLS_SHORT",
            "NO, 100 degC, DOES_NOT_APPLY" })
    void speaksAtOneHundredAndSixtyFiveFahrenheit(Answer fitted, String setting, Standing expected) {
        judge(ExhaustAlarmSetting.check(), alarm(fitted, setting)).is(expected);
    }

    @Test
    void theLowerSettingMeets() {
        judge(ExhaustAlarmSetting.check(), alarm(Answer.YES, "95 degC")).fallsShort().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutTheSetting() {
        CommissioningRecord record = alarm(Answer.YES, "95 degC");
        exhaust(record).setTemperatureAlarmSetting(null);
        judge(ExhaustAlarmSetting.check(), record).cannotTell("exhaust.temperatureAlarmSetting");
    }
}
