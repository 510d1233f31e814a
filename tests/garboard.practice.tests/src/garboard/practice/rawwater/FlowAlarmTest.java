// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class FlowAlarmTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged with(AlarmKind kind) {
        AlarmDevice alarm = GarboardFactory.eINSTANCE.createAlarmDevice();
        alarm.setKind(kind);
        record.getAlarms().getAlarms().add(alarm);
        return judge(FlowAlarm.check(), record);
    }

    @Test
    void oneOfTheTwoAlarmsMeets() {
        // common practice; 46 CFR 119.425(b)(5) where the exhaust water has its own pump
        with(AlarmKind.COOLANT_TEMPERATURE).fallsShort();
        with(AlarmKind.RAW_WATER_FLOW).meets();
    }

    @Test
    void exhaustTemperatureAlarmCounts() {
        with(AlarmKind.EXHAUST_TEMPERATURE).meets();
    }

    @Test
    void theExhaustsOwnAnswerCounts() {
        record.getExhaust().setTemperatureAlarm(Answer.YES);
        judge(FlowAlarm.check(), record).meets();
        record.getExhaust().setTemperatureAlarm(Answer.NO);
        with(AlarmKind.COOLANT_TEMPERATURE).fallsShort();
    }

    @Test
    void cannotTellWithoutAlarms() {
        judge(FlowAlarm.check(), record).cannotTell("alarms.alarms.kind");
    }
}
