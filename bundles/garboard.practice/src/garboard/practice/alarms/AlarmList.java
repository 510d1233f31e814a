// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__ALARMS;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__KIND;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.AlarmDevice;
import garboard.model.AlarmKind;
import garboard.model.AlarmsAndSafety;

/** The list of alarms. */
final class AlarmList {

    private AlarmList() {
    }

    /** The check that an alarm of a kind is in the list: everything but texts. */
    static Check.Builder<AlarmsAndSafety> lists(String id, AlarmKind kind) {
        return Check.check(id, AlarmsAndSafety.class)
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .needs(path(ALARMS_AND_SAFETY__ALARMS, ALARM_DEVICE__KIND))
            .holds(s -> {
                boolean listed = s.subject().getAlarms().stream().anyMatch(alarm -> alarm.getKind() == kind);
                return Comparison.holds(listed ? "there is an alarm of " + name(kind) : "there is no alarm of " + name(kind), listed);
            });
    }

    /** A kind of alarm in words, such as {@code oil pressure}. */
    static String name(AlarmKind kind) {
        return kind.getLiteral().replace('-', ' ');
    }

    /** Whether an alarm stands in the list of the installation; the trial keeps its own list of shutdowns. */
    static boolean isOfTheInstallation(AlarmDevice alarm) {
        return alarm.eContainer() instanceof AlarmsAndSafety;
    }
}
