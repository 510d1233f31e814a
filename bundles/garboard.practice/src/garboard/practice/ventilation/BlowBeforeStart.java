// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_BEFORE_START;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.TimeSpan;

/** The blower runs for four minutes before a gasoline set is started, as the label of 33 CFR 183.610(f) has it. */
final class BlowBeforeStart {

    private static final TimeSpan LEAST = TimeSpan.of(4, "min");

    private BlowBeforeStart() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("VENT-BLOWER-TIME", AlarmsAndSafety.class)
            .title("Blower runs long enough before the start")
            .why("Vapour that is still in the compartment is lit by the starter.")
            .basis(Sources.yardstick("33 CFR 183.610(f), whose label has it")
                .othersSay("46 CFR 185.352 asks passenger vessels for one change of air"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least 4 min")
            .applies(Conditions.gasolineSet())
            .applies(VentilationConditions.closedToAtmosphere())
            .applies(Conditions.unlessLawForPassengers("185.352"))
            .needs(ALARMS_AND_SAFETY__VAPOUR_BEFORE_START)
            .holds(s -> Comparison.atLeast(inWords(s.subject()), s.subject().getVapourBeforeStart(), Limit.of(LEAST, "label of 33 CFR 183.610(f)")))
            .remedy("Run the blower for 4 min before each start; a timer in the start circuit sees to it",
                s -> Optional.of(Remedy.of("Run the blower for 4 min before each start; a timer in the start circuit sees to it")
                    .setting(s.subject(), ALARMS_AND_SAFETY__VAPOUR_BEFORE_START, LEAST)))
            .build();
    }

    static String inWords(AlarmsAndSafety safety) {
        return "the blower runs for " + Figures.both(safety.getVapourBeforeStart()) + " before the start";
    }
}
