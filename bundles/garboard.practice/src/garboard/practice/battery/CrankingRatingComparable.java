// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_BATTERY_CC_A;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CRANKING_RATING_DEFINITION;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.StartingBattery;
import garboard.practice.Sources;

/** Label and requirement speak of the same test. Factors between the tests are guesses, so none is ever applied. */
final class CrankingRatingComparable {

    private CrankingRatingComparable() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CRANKING-DEFINITION", StartingBattery.class)
            .title("Label states the cranking current by the test that is asked for")
            .why("The same battery shows more current by an easier test; held against the harder one it passes although it is too small.")
            .basis(Sources.CRANKING_DEFINITIONS)
            .gravity(Gravity.DEFECT)
            .limit("the test that the maker names with his figure; CCA by SAE J537 where he gives none")
            .needs(STARTING_BATTERY__CRANKING_RATING_DEFINITION)
            .uses(MAKER_LIMITS__MINIMUM_BATTERY_CC_A)
            .needsWhen(s -> CrankingRequirement.makers(s).isPresent(), path(MAKER_LIMITS__BATTERY_CRANKING_DEFINITION))
            .holds(CrankingRatingComparable::compare)
            .remedy("Take the figure by the test that is asked for from the label or the battery maker's sheet; do not convert")
            .build();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        String label = "the label gives " + CrankingRequirement.inWords(s.subject().getCrankingRatingDefinition());
        boolean same = CrankingRequirement.comparable(s);
        return Comparison.holds(same ? label + ", as asked for"
            : label + "; asked for is " + CrankingRequirement.inWords(CrankingRequirement.definition(s)), same);
    }
}
