// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__ALARMS;
import static garboard.model.GarboardPackage.Literals.ALARM_DEVICE__KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__LENGTH_OVERALL;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.AlarmKind;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 46 CFR 182.530: a vessel of 7.9 m or more has a bilge alarm in a space that nobody watches and sea water is piped through. */
final class BilgeAlarmOfPassengerVessel {

    private static final Length FROM = Length.of(7.9);

    private BilgeAlarmOfPassengerVessel() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("RAWWATER-BILGE-ALARM-182-530", AlarmsAndSafety.class)
            .title("High-water alarm in the space of the set (small passenger vessels)")
            .why("A split raw-water hose is noticed too late in a space where nobody is.")
            .basis(Sources.cfr46("182.530").othersSay("the rule prints 26 ft beside 7.9 m; 26 ft are 7.925 m"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("vessels of 7.9 m (26 ft) and more: an alarm that is seen and heard at the operating station")
            .applies(Conditions.smallPassengerVessel())
            .applies(longEnough())
            .needs(path(ALARMS_AND_SAFETY__ALARMS, ALARM_DEVICE__KIND))
            .holds(s -> {
                boolean fitted = s.subject().getAlarms().stream().anyMatch(alarm -> alarm.getKind() == AlarmKind.BILGE_LEVEL);
                return Comparison.holds(fitted ? "a bilge-level alarm is fitted" : "no bilge-level alarm is among the alarms", fitted);
            })
            .remedy("Fit a bilge high-water alarm with light and horn at the operating station")
            .build();
    }

    private static Condition<EObject> longEnough() {
        return Condition.when("vessels of 7.9 m (26 ft) and more").known(path(VESSEL__LENGTH_OVERALL))
            .test(s -> !s.vessel().getLengthOverall().isLessThan(FROM), "the vessel is shorter than 7.9 m");
    }
}
