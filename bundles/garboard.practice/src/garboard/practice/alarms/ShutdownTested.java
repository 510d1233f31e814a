// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__KIND;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__TEST_RESULT;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmDevice;
import garboard.practice.TestResults;

/** Each alarm that guards the set was tried. */
final class ShutdownTested {

    private ShutdownTested() {
    }

    static Check<AlarmDevice> check() {
        return Check.check("ALARM-SHUTDOWN-TESTED", AlarmDevice.class)
            .among(alarm -> AlarmList.isOfTheInstallation(alarm) && !PeopleAlarmTested.warnsPeople(alarm), path(ALARM_DEVICE__KIND))
            .title("Alarm that guards the set was tested")
            .why("A switch with a broken wire shows only when the engine is lost.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("exhaust temperature, raw-water flow, oil pressure, coolant temperature, overspeed, low voltage: tested and passed")
            .needs(ALARM_DEVICE__TEST_RESULT)
            .holds(s -> TestResults.passed(s.subject().getTestResult(), "the alarm of " + AlarmList.name(s.subject().getKind())))
            .remedy("Prove it by its cause or at the contacts of its sensor; repair what does not sound or stop")
            .build();
    }
}
