// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__FEED_PRESSURE;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__FEED_PRESSURE_HIGH;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__FEED_PRESSURE_LOW;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.FuelSupply;
import garboard.model.MakerLimits;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.quantity.GaugePressure;

/** The low-pressure feed of an injected gasoline set holds the usual pressure. */
final class FeedPressure {

    private static final Limit<GaugePressure> LOW = Limit.of(GaugePressure.of(3, "psi"), "common practice");
    private static final Limit<GaugePressure> HIGH = Limit.of(GaugePressure.of(5, "psi"), "common practice");

    private FeedPressure() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-FEED-PRESSURE", FuelSupply.class)
            .title("Low-pressure fuel feed is in its range")
            .why("Below its range the set does not start or stumbles under load; above it the feed floods the vapour separator.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("3 to 5 psi (20.7 to 34.5 kPa) with the key on, or the maker's range")
            .applies(FuelConditions.portInjectedGasoline())
            .needs(FUEL_SUPPLY__FEED_PRESSURE)
            .uses(MAKER_LIMITS__FEED_PRESSURE_LOW, MAKER_LIMITS__FEED_PRESSURE_HIGH)
            .needsWhen(s -> s.maker(MakerLimits::getFeedPressureHigh).isPresent(), path(MAKER_LIMITS__FEED_PRESSURE_LOW))
            .needsWhen(s -> s.maker(MakerLimits::getFeedPressureLow).isPresent(), path(MAKER_LIMITS__FEED_PRESSURE_HIGH))
            .holds(s -> Comparison.between("the feed shows " + Figures.both(s.subject().getFeedPressure()), s.subject().getFeedPressure(),
                MakersLimit.or(s.maker(MakerLimits::getFeedPressureLow), () -> LOW),
                MakersLimit.or(s.maker(MakerLimits::getFeedPressureHigh), () -> HIGH)))
            .remedy("Turn the key on for 2 s and off, three or four times; then look at filter, pump and anti-siphon valve")
            .build();
    }
}
