// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;

/** Alarms to judge. */
final class Devices {

    private Devices() {
    }

    /** One more alarm of a kind, of which nothing else is entered. */
    static AlarmDevice add(CommissioningRecord record, AlarmKind kind) {
        AlarmDevice alarm = GarboardFactory.eINSTANCE.createAlarmDevice();
        alarm.setKind(kind);
        record.getAlarms().getAlarms().add(alarm);
        return alarm;
    }
}
