// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_DETECTOR;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 182.410(c) and 182.480: a vapour detector in each enclosed space with gasoline machinery. */
final class VapourDetectorOnPassengerVessel {

    private VapourDetectorOnPassengerVessel() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-VAPOUR-182-480", AlarmsAndSafety.class)
            .title("Vapour detector in the gasoline space (small passenger vessels)")
            .why("Vapour that nobody notices is lit by the next start.")
            .basis(Sources.cfr46("182.410(c) and 182.480"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("fuel of a flash point up to 43.3 degC (110 F): a detector on for 30 s before the start and as long as the engine runs, "
                + "with light and horn at the operating station")
            .applies(Conditions.smallPassengerVessel())
            .applies(Conditions.gasolineSet())
            .needs(ALARMS_AND_SAFETY__VAPOUR_DETECTOR)
            .holds(s -> Answers.demanded(s.subject().getVapourDetector(), "a vapour detector is fitted", "no vapour detector is fitted"))
            .remedy("Fit a vapour detector to UL 1110 with its alarm at the operating station")
            .build();
    }
}
