// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AlarmKind;
import garboard.model.CommissioningRecord;
import garboard.model.TestResult;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class ShutdownTestedTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "OIL_PRESSURE, PASSED, MEETS", "COOLANT_TEMPERATURE, FAILED, FALLS_SHORT", "EXHAUST_TEMPERATURE, NOT_TESTED, FALLS_SHORT",
        "RAW_WATER_FLOW, PASSED, MEETS", "OVERSPEED, NOT_TESTED, FALLS_SHORT", "LOW_VOLTAGE, PASSED, MEETS" })
    void tested(AlarmKind kind, TestResult result, Standing standing) { // common practice
        Devices.add(record, kind).setTestResult(result);
        judge(ShutdownTested.check(), record).is(standing);
    }

    @Test
    void looksAtAlarmsThatGuardTheSet() {
        Devices.add(record, AlarmKind.CARBON_MONOXIDE);
        assertThat(Judged.all(ShutdownTested.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutTheResult() {
        Devices.add(record, AlarmKind.OIL_PRESSURE);
        judge(ShutdownTested.check(), record).cannotTell("alarms.alarms[0].testResult");
    }
}
