// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** A carbon-monoxide alarm in each space where people live. */
final class CarbonMonoxideInEverySpace {

    private CarbonMonoxideInEverySpace() {
    }

    static Check<AlarmsAndSafety> check() {
        return Check.check("ALARM-CO-SPACES", AlarmsAndSafety.class)
            .title("Carbon-monoxide alarm in every habitable space")
            .why("The gas has no smell and puts people to sleep before they feel ill; it comes from the neighbour's set as well as from this one.")
            .basis(Sources.ABYC_A_24.othersSay("before 2025 one for an accommodation with berth, galley and head together; no federal rule asks for any"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("one wherever people sleep, cook, eat, wash or steer")
            .applies(Conditions.asked(ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE))
            .needs(ALARMS_AND_SAFETY__CARBON_MONOXIDE_IN_EVERY_SPACE)
            .holds(s -> Answers.yes(s.subject().getCarbonMonoxideInEverySpace(), "every habitable space has an alarm",
                "a habitable space has no alarm"))
            .remedy("Fit an alarm in every space where people sleep, cook, eat, wash or steer")
            .build();
    }
}
