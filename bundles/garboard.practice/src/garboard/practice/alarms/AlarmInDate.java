// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__EXPIRES_ON;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__KIND;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;

/** An alarm with a date is in date; those of carbon monoxide are told together. */
final class AlarmInDate {

    private AlarmInDate() {
    }

    static Check<AlarmDevice> check() {
        return Check.check("ALARM-DATE", AlarmDevice.class)
            .among(alarm -> AlarmList.isOfTheInstallation(alarm) && alarm.getKind() != AlarmKind.CARBON_MONOXIDE && alarm.getExpiresOn() != null,
                path(ALARM_DEVICE__KIND), path(ALARM_DEVICE__EXPIRES_ON))
            .title("Alarm with a date on it is in date")
            .why("An old sensor stays silent although its light is green.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("the date on the device, that day included")
            .needs(ALARM_DEVICE__EXPIRES_ON)
            .holds(s -> Expiry.compare(s.subject().getExpiresOn(), s.today()))
            .remedy("Replace the device")
            .build();
    }
}
