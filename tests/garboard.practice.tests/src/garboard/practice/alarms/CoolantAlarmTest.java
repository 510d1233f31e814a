// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.AlarmKind;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;

class CoolantAlarmTest {

    private final CommissioningRecord record = Installation.empty();

    @Test
    void isAmongTheAlarms() { // common practice
        Devices.add(record, AlarmKind.OIL_PRESSURE);
        judge(CoolantAlarm.check(), record).fallsShort();
        Devices.add(record, AlarmKind.COOLANT_TEMPERATURE);
        judge(CoolantAlarm.check(), record).meets();
    }

    @Test
    void cannotTellWithoutAList() {
        judge(CoolantAlarm.check(), record).cannotTell("alarms.alarms.kind");
    }
}
