// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BATTERY_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.StartingBattery;
import garboard.physics.battery.LoadTest;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** The voltage at the battery's posts while the starter turns. Low here is the battery; good here and low at the starter is the cable. */
final class PostsWhileCranking {

    private static final Temperature COLDEST = Temperature.of(-18, "degC");
    private static final Temperature WARMEST = Temperature.of(50, "degC");

    private PostsWhileCranking() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-CRANKING-VOLTAGE", StartingBattery.class)
            .title("Battery holds its voltage under the starter")
            .why("A battery that sags turns the engine slowly: it will not fire, and each try pumps water into the exhaust.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("9.6 V for each 12 V block from 21 degC (70 degF) up, falling to 8.5 V at -18 degC (0 degF); or the maker's least")
            .applies(BatteryConditions.leadAcid())
            .needs(STARTING_BATTERY__CRANKING_VOLTAGE_AT_POSTS)
            .uses(MAKER_LIMITS__MINIMUM_CRANKING_VOLTAGE)
            .needsWhen(s -> makers(s).isEmpty(), Bank.size())
            .needsWhen(s -> makers(s).isEmpty(), path(STARTING_BATTERY__BATTERY_TEMPERATURE))
            .holds(s -> Comparison.atLeast("the posts hold " + Figures.both(s.subject().getCrankingVoltageAtPosts()) + " while cranking",
                s.subject().getCrankingVoltageAtPosts(), limit(s)))
            .remedy("Charge the battery and crank again; if the posts still sag, load-test it and replace it")
            .build();
    }

    private static Limit<Voltage> limit(Situation<StartingBattery> s) {
        return MakersLimit.or(makers(s), () -> {
            Voltage block = LoadTest.leastVoltage(listed(s.subject().getBatteryTemperature()), 1);
            return Limit.of(Bank.ofBlock(s.subject(), block), "common practice: least voltage by the battery's temperature");
        });
    }

    private static Optional<Voltage> makers(Situation<StartingBattery> s) {
        return s.maker(MakerLimits::getMinimumCrankingVoltage);
    }

    /** Beyond the ends of the table its last figure stands. */
    private static Temperature listed(Temperature battery) {
        if (battery.isLessThan(COLDEST)) {
            return COLDEST;
        }
        return battery.isMoreThan(WARMEST) ? WARMEST : battery;
    }
}
