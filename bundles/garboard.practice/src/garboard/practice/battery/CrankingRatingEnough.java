// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__CRANKING_CURRENT;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__BATTERY_CRANKING_DEFINITION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_BATTERY_CC_A;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCK_CRANKING_RATING;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CRANKING_RATING_DEFINITION;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__STRINGS_IN_PARALLEL;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Current;

/** The bank's cold-cranking current is the maker's least, or what keeps 9.6 V at the posts of each 12 V block under the starter. */
final class CrankingRatingEnough {

    private CrankingRatingEnough() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CCA", StartingBattery.class)
            .title("Battery has the cold-cranking current that the set needs")
            .why("A battery too small lets the voltage break down: the engine turns too slowly to fire and its controller may reset.")
            .basis(Basis.derived("straight line from rested voltage to the 7.2 V at which the CCA of SAE J537 is measured; "
                + "floor of 9.6 V by common practice"))
            .gravity(Gravity.DEFECT)
            .limit("the maker's least; else 1.77 times the cranking current, as CCA by SAE J537, for the bank")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__BLOCK_CRANKING_RATING, STARTING_BATTERY__STRINGS_IN_PARALLEL, STARTING_BATTERY__CRANKING_RATING_DEFINITION)
            .uses(MAKER_LIMITS__MINIMUM_BATTERY_CC_A)
            .needsWhen(s -> CrankingRequirement.makers(s).isPresent(), path(MAKER_LIMITS__BATTERY_CRANKING_DEFINITION))
            .needsWhen(s -> CrankingRequirement.makers(s).isEmpty(), path(GENERATOR_SET__CRANKING_CURRENT))
            .holds(CrankingRatingEnough::compare)
            .remedy("Fit larger blocks or a second string", s -> Optional.of(remedy(s)))
            .build();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        String label = Figures.both(Bank.crankingRating(s.subject())) + ", " + CrankingRequirement.inWords(s.subject().getCrankingRatingDefinition());
        return CrankingRequirement.comparable(s)
            ? Comparison.atLeast("the bank is rated for " + label, Bank.crankingRating(s.subject()), CrankingRequirement.least(s))
            : Comparison.undecided("the label gives " + label + "; asked for is " + CrankingRequirement.inWords(CrankingRequirement.definition(s))
                + ", and the two must not be converted");
    }

    private static Remedy remedy(Situation<StartingBattery> s) {
        return CrankingRequirement.comparable(s) ? larger(s.subject(), CrankingRequirement.least(s).value())
            : Remedy.of("Take the figure by the test that is asked for from the label or the battery maker's sheet");
    }

    /** Blocks that give the bank a rating, in steps of 10 A. */
    static Remedy larger(StartingBattery battery, Current bankNeeds) {
        Current block = Rounding.up(Current.of(bankNeeds.si() / battery.getStringsInParallel()), 10, "A");
        return Remedy.of("Fit blocks of at least " + Figures.both(block) + " each, by the same test, or add a string in parallel")
            .setting(battery, STARTING_BATTERY__BLOCK_CRANKING_RATING, block);
    }
}
