// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__ALARMS;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__EXPIRES_ON;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__KIND;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Sources;

/** The sensor of a carbon-monoxide alarm ages; the earliest date counts. */
final class CarbonMonoxideInDate {

    private CarbonMonoxideInDate() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-CO-DATE", AlarmsAndSafety.class)
            .title("Carbon-monoxide alarms are in date")
            .why("An old sensor stays silent although its light is green.")
            .basis(Sources.ABYC_A_24)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("the date on the back, that day included")
            .needsWhen(s -> datesInTheList(s.subject()).isEmpty(), path(ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY))
            .uses(path(ALARMS_AND_SAFETY__ALARMS, ALARM_DEVICE__KIND), path(ALARMS_AND_SAFETY__ALARMS, ALARM_DEVICE__EXPIRES_ON))
            .uses(ALARMS_AND_SAFETY__CARBON_MONOXIDE_EXPIRY)
            .holds(s -> Expiry.compare(earliest(s.subject()), s.today()))
            .remedy("Replace the alarms that are out of date")
            .build();
    }

    private static LocalDate earliest(AlarmsAndSafety safety) {
        return Stream.concat(datesInTheList(safety).stream(), Stream.ofNullable(safety.getCarbonMonoxideExpiry())).min(LocalDate::compareTo).orElseThrow();
    }

    private static List<LocalDate> datesInTheList(AlarmsAndSafety safety) {
        return safety.getAlarms().stream().filter(alarm -> alarm.getKind() == AlarmKind.CARBON_MONOXIDE).map(AlarmDevice::getExpiresOn)
            .filter(Objects::nonNull).toList();
    }
}
