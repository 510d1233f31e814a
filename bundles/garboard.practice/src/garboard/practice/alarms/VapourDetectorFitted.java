// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_DETECTOR;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** A fuel-vapour detector where gasoline may lie in the bilge; no law asks for one on a yacht. */
final class VapourDetectorFitted {

    private VapourDetectorFitted() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-VAPOUR", AlarmsAndSafety.class)
            .title("Fuel-vapour detector in the space of a gasoline set")
            .why("A nose tires and a blower hides a leak; the detector tells of vapour before the start.")
            .basis(Basis.commonPractice().othersSay("46 CFR 182.480 demands one on small passenger vessels; 33 CFR 183 demands none"))
            .gravity(Gravity.ADVICE)
            .limit("a detector whose alarm is seen and heard where the set is started")
            .applies(Conditions.gasolineSet())
            .applies(Conditions.unlessLawForPassengers("182.480"))
            .applies(Conditions.asked(ALARMS_AND_SAFETY__VAPOUR_DETECTOR))
            .needs(ALARMS_AND_SAFETY__VAPOUR_DETECTOR)
            .holds(s -> Answers.yes(s.subject().getVapourDetector(), "a fuel-vapour detector is fitted", "no fuel-vapour detector is fitted"))
            .remedy("Fit a fuel-vapour detector with its sensor low in the space")
            .build();
    }
}
