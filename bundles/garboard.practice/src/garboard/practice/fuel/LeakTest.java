// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__HIGHEST_LINE_POINT;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__LEAK_TEST_HELD;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__LEAK_TEST_PRESSURE;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__LOWEST_LINE_POINT;
import static garboard.model.GarboardPackage.Literals.FUEL_TANK__TOP;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.POINT__Z;

import java.util.Optional;

import garboard.checks.Comparison;
import garboard.checks.FeaturePath;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.FuelSupply;
import garboard.physics.fuel.FuelSystem33Cfr183;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Density;
import garboard.quantity.Length;

/** What the leak test of the law and the one of good practice have in common. */
final class LeakTest {

    private LeakTest() {
    }

    static FeaturePath[] inputs() {
        return new FeaturePath[] {path(FUEL_SUPPLY__LEAK_TEST_PRESSURE), path(FUEL_SUPPLY__LEAK_TEST_HELD), path(FUEL_TANK__TOP, POINT__Z),
            path(FUEL_SUPPLY__HIGHEST_LINE_POINT), path(FUEL_SUPPLY__LOWEST_LINE_POINT), path(GENERATOR_SET__FUEL)};
    }

    static Comparison compare(Situation<FuelSupply> s, Density fuel, String origin) {
        if (s.subject().getLeakTestHeld() != Answer.YES) {
            return Comparison.holds("the system did not hold its test pressure", false);
        }
        return Comparison.atLeast("the system held " + Figures.both(s.subject().getLeakTestPressure())
            + "; the head at the lowest point is " + Figures.both(head(s)), s.subject().getLeakTestPressure(),
            Limit.of(FuelSystem33Cfr183.leakTest(fuel, head(s)), origin));
    }

    static Optional<Remedy> remedy(Situation<FuelSupply> s, Density fuel) {
        return Optional.of(Remedy.of("Find the leak if there is one, test again with air or inert gas at "
            + Figures.both(Rounding.up(FuelSystem33Cfr183.leakTest(fuel, head(s)), 0.5, "kPa")) + " or more, and log it"));
    }

    /** From the highest point that fuel can stand at, tank or line, down to the lowest point. */
    private static Length head(Situation<FuelSupply> s) {
        double highestM = Math.max(s.subject().getTank().getTop().getZ().si(), s.subject().getHighestLinePoint().si());
        return Length.of(Math.max(0, highestM - s.subject().getLowestLinePoint().si()));
    }
}
