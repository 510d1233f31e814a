// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class BilgeAlarmOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aSmallPassengerVessel() {
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    private Judged length(String overall, AlarmKind... alarms) {
        record.getVessel().setLengthOverall(Length.valueOf(overall));
        record.getAlarms().getAlarms().clear();
        for (AlarmKind kind : alarms) {
            AlarmDevice alarm = GarboardFactory.eINSTANCE.createAlarmDevice();
            alarm.setKind(kind);
            record.getAlarms().getAlarms().add(alarm);
        }
        return judge(BilgeAlarmOfPassengerVessel.check(), record);
    }

    @Test
    void alarmIsRequiredFromSevenPointNineMetres() {
        // 46 CFR 182.530: 7.8 m not required, 7.9 m required
        length("7.9 m", AlarmKind.OIL_PRESSURE).fallsShort();
        length("7.9 m", AlarmKind.OIL_PRESSURE, AlarmKind.BILGE_LEVEL).meets();
        length("7.8 m", AlarmKind.OIL_PRESSURE).doesNotApply();
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.TOWING);
        length("12 m", AlarmKind.OIL_PRESSURE).doesNotApply();
    }

    @Test
    void cannotTellWithoutAnyAlarm() {
        length("12 m").cannotTell("alarms.alarms.kind");
    }
}
