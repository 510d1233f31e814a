// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__CRANKING_CURRENT;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__EMERGENCY_SOURCE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.MakerLimits;
import garboard.model.StartingBattery;
import garboard.practice.MakersLimit;
import garboard.quantity.Charge;

/** The battery is good for six starts in a row. */
final class ChargeForStarts {

    private ChargeForStarts() {
    }

    static Check<StartingBattery> check() {
        return StartingCharge.check("BATTERY-STARTS")
            .title("Battery is good for six starts in a row")
            .basis(Basis.commonPractice().othersSay("46 CFR 112.50-1(k) asks for six starts of emergency sets"))
            .gravity(Gravity.ADVICE)
            .limit("the maker's least ampere-hours; else 6 starts of 10 s out of 20 % of the rated charge")
            .applies(Condition.when("sets that are not the emergency source of power").known().test(
                s -> BatteryConditions.battery(s).getEmergencySource() != Answer.YES, "the set is the emergency source and is judged as such"))
            .uses(STARTING_BATTERY__EMERGENCY_SOURCE, MAKER_LIMITS__MINIMUM_BATTERY_CAPACITY)
            .needsWhen(s -> makers(s).isEmpty(), path(GENERATOR_SET__CRANKING_CURRENT))
            .holds(s -> StartingCharge.compare(s.subject(), limit(s)))
            .remedy("Fit larger blocks or a second string", s -> Optional.of(StartingCharge.larger(s.subject(), limit(s))))
            .build();
    }

    private static Limit<Charge> limit(Situation<StartingBattery> s) {
        return MakersLimit.or(makers(s), () -> StartingCharge.sixStarts(s.set().getCrankingCurrent()));
    }

    private static Optional<Charge> makers(Situation<StartingBattery> s) {
        return s.maker(MakerLimits::getMinimumBatteryCapacity);
    }
}
