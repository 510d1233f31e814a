// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__KIND;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__TEST_RESULT;

import java.util.EnumSet;
import java.util.Set;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.practice.TestResults;

/** Each alarm that warns people was tried. */
final class PeopleAlarmTested {

    private static final Set<AlarmKind> PEOPLE = EnumSet.of(AlarmKind.CARBON_MONOXIDE, AlarmKind.FUEL_VAPOUR, AlarmKind.FIRE, AlarmKind.BILGE_LEVEL);

    private PeopleAlarmTested() {
    }

    static Check<AlarmDevice> check() {
        return Check.check("ALARM-TESTED", AlarmDevice.class)
            .among(alarm -> AlarmList.isOfTheInstallation(alarm) && warnsPeople(alarm), path(ALARM_DEVICE__KIND))
            .title("Alarm that warns people was tested")
            .why("An alarm that was never tried is a decoration.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("carbon monoxide, fuel vapour, fire and bilge level: tested and passed")
            .needs(ALARM_DEVICE__TEST_RESULT)
            .holds(s -> TestResults.passed(s.subject().getTestResult(), "the alarm of " + AlarmList.name(s.subject().getKind())))
            .remedy("Test it as its maker says; replace it if it stays silent")
            .build();
    }

    static boolean warnsPeople(AlarmDevice alarm) {
        return PEOPLE.contains(alarm.getKind());
    }
}
