// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_SEPARATOR__RATED_FLOW;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PUMP_FLOW;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL_SYSTEM;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelSeparator;
import garboard.model.FuelSupply;
import garboard.model.FuelSystem;
import garboard.model.MakerLimits;
import garboard.physics.fuel.SeparatorFlow;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.VolumeFlow;

/** The separator is rated for what the pump moves, which is more than what the engine burns. */
final class SeparatorCarriesTheFlow {

    private SeparatorCarriesTheFlow() {
    }

    static Check<FuelSeparator> check() {
        return Check.check("FUEL-SEPARATOR-FLOW", FuelSeparator.class)
            .title("Fuel separator is rated for the pump's flow")
            .why("Faster than it is rated for, fuel drags the water through the element and into the injection.")
            .basis(Sources.FILTER_COUNCIL.othersSay("Gerr: hp/600 US gal/min for diesel; a rule from cars: 151 L/h (40 gal/h) with return"))
            .gravity(Gravity.DEFECT)
            .limit("rated for the pump's flow; where that is not known 0.18 gal/h for each hp (0.91 L/h per kW) of a diesel,"
                + " 0.10 gal/h (0.51 L/h per kW) with carburettor; or the maker's figure")
            .uses(path(MAKER_LIMITS__REQUIRED_SEPARATOR_FLOW), path(FUEL_SUPPLY__PUMP_FLOW))
            .needsWhen(SeparatorCarriesTheFlow::isEstimated, path(GENERATOR_SET__FUEL))
            .needsWhen(s -> isEstimated(s) && FuelFigures.isGasoline(s), path(GENERATOR_SET__FUEL_SYSTEM))
            .needsWhen(s -> isEstimated(s) && hasReturn(s), path(FUEL_SUPPLY__PUMP_FLOW))
            .needsWhen(SeparatorCarriesTheFlow::isEstimated, path(GENERATOR_SET__SHAFT_POWER))
            .needs(FUEL_SEPARATOR__RATED_FLOW)
            .holds(s -> Comparison.atLeast("the separator is rated for " + Figures.both(s.subject().getRatedFlow()) + "; "
                + Figures.both(limit(s).value()) + " run through it", s.subject().getRatedFlow(), limit(s)))
            .remedy("Fit a separator for the flow of the pump", s -> {
                VolumeFlow wanted = Rounding.up(limit(s).value(), 1, "L/h");
                return Optional.of(Remedy.of("Fit a separator rated for at least " + Figures.both(wanted))
                    .setting(s.subject(), FUEL_SEPARATOR__RATED_FLOW, wanted));
            })
            .build();
    }

    private static boolean isEstimated(Situation<FuelSeparator> s) {
        return makersFlow(s).isEmpty() && pumpFlow(s).isEmpty();
    }

    /** What a pump with return moves has nothing to do with the power; only the pump's own data tell. */
    private static boolean hasReturn(Situation<FuelSeparator> s) {
        return FuelFigures.isGasoline(s) && s.set().getFuelSystem() != FuelSystem.CARBURETTOR;
    }

    private static Limit<VolumeFlow> limit(Situation<FuelSeparator> s) {
        return MakersLimit.or(makersFlow(s), () -> pumpFlow(s).map(flow -> Limit.of(flow, "flow of the fuel pump"))
            .orElseGet(() -> Limit.of(rule(s).least(s.set().getShaftPower()), "filter trade council, by power")));
    }

    private static SeparatorFlow rule(Situation<FuelSeparator> s) {
        return FuelFigures.isGasoline(s) ? SeparatorFlow.GASOLINE_WITHOUT_RETURN : SeparatorFlow.DIESEL;
    }

    private static Optional<VolumeFlow> makersFlow(Situation<FuelSeparator> s) {
        return s.maker(MakerLimits::getRequiredSeparatorFlow);
    }

    private static Optional<VolumeFlow> pumpFlow(Situation<FuelSeparator> s) {
        return s.optional(s.record().getFuelSupply(), FuelSupply::getPumpFlow);
    }
}
