// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.TestResult;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class PeopleAlarmTestedTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "CARBON_MONOXIDE, PASSED, MEETS", "FUEL_VAPOUR, FAILED, FALLS_SHORT", "FIRE, NOT_TESTED, FALLS_SHORT", "BILGE_LEVEL, PASSED, MEETS" })
    void tested(AlarmKind kind, TestResult result, Standing standing) { // common practice
        Devices.add(record, kind).setTestResult(result);
        judge(PeopleAlarmTested.check(), record).is(standing);
    }

    @Test
    void looksAtAlarmsOfTheInstallationThatWarnPeople() {
        Devices.add(record, AlarmKind.OIL_PRESSURE);
        AlarmDevice inTheTrial = GarboardFactory.eINSTANCE.createAlarmDevice();
        inTheTrial.setKind(AlarmKind.FIRE);
        record.getTrial().getShutdownTests().add(inTheTrial);
        assertThat(Judged.all(PeopleAlarmTested.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutTheResult() {
        Devices.add(record, AlarmKind.FIRE);
        judge(PeopleAlarmTested.check(), record).cannotTell("alarms.alarms[0].testResult");
    }
}
