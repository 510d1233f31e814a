// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__DIELECTRIC_SHIELD;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.StartingBattery;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** Metal fuel parts close above a battery are shielded, so that a tool between the two closes no circuit. */
final class FuelPartsShielded {

    private FuelPartsShielded() {
    }

    /** Everything but authority and reach. */
    static Check.Builder<StartingBattery> check(String id) {
        return Check.check(id, StartingBattery.class)
            .why("A spanner or a loose cable between post and fuel pipe burns a hole into the pipe and lights what runs out.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .applies(Conditions.asked(STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH))
            .needs(STARTING_BATTERY__FUEL_PARTS_WITHIN_REACH)
            .needsWhen(FuelPartsShielded::withinReach, path(STARTING_BATTERY__DIELECTRIC_SHIELD))
            .holds(FuelPartsShielded::compare)
            .remedy("Put a shield of insulating material between battery and fuel parts, or move one of them");
    }

    private static boolean withinReach(Situation<StartingBattery> s) {
        return s.subject().getFuelPartsWithinReach() == Answer.YES;
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        if (!withinReach(s)) {
            return Comparison.holds("no metal fuel part lies close above the battery", true);
        }
        return Answers.yes(s.subject().getDielectricShield(), "an insulating shield lies between the battery and the metal fuel parts above it",
            "metal fuel parts lie close above the battery without a shield");
    }
}
