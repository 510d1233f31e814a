// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__HEAT_TO_COOLANT;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.WATER_PUMP__RATED_FLOW;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.WaterPump;
import garboard.physics.rawwater.CoolingWater;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.practice.Rounding;
import garboard.quantity.VolumeFlow;

/** The pump's rated flow takes the coolant's heat away with a moderate rise of temperature: a heat balance, before anything is measured. */
final class PumpCarriesTheHeat {

    private PumpCarriesTheHeat() {
    }

    static Check<WaterPump> check() {
        return Check.check("RAWWATER-FLOW-RATED", WaterPump.class)
            .title("Raw-water pump moves enough water for the set's heat")
            .why("A pump too small lets the sea water leave hot: salt falls out in the heat exchanger and the exhaust hose cooks.")
            .basis(Basis.derived("heat balance: heat to the coolant over density, specific heat and a rise of 12 K")
                .othersSay("the rise through the heat exchanger is 8 to 15 K in practice"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least the flow that takes the heat to the coolant away with a rise of 12 K, or the maker's least flow")
            .applies(RawWaterConditions.cooledBySeaWater())
            .uses(MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW)
            .needsWhen(s -> makersFlow(s).isEmpty(), path(GENERATOR_SET__HEAT_TO_COOLANT),
                path(RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE))
            .needs(WATER_PUMP__RATED_FLOW)
            .holds(s -> Comparison.atLeast("the pump is rated for " + Figures.both(s.subject().getRatedFlow())
                + "; the set asks for " + Figures.both(limit(s).value()), s.subject().getRatedFlow(), limit(s)))
            .remedy("Fit a pump for the flow that the heat asks for", s -> {
                VolumeFlow wanted = Rounding.up(limit(s).value(), 1, "L/min");
                return Optional.of(Remedy.of("Fit a pump for at least " + Figures.both(wanted))
                    .setting(s.subject(), WATER_PUMP__RATED_FLOW, wanted));
            })
            .build();
    }

    private static Limit<VolumeFlow> limit(Situation<WaterPump> s) {
        return MakersLimit.or(makersFlow(s), () -> Limit.of(flowForHeat(s), "heat balance at a rise of 12 K"));
    }

    private static Optional<VolumeFlow> makersFlow(Situation<WaterPump> s) {
        return s.maker(MakerLimits::getMinimumRawWaterFlow);
    }

    private static VolumeFlow flowForHeat(Situation<WaterPump> s) {
        return CoolingWater.sea(s.record().getRawWater().getDesignSeaTemperature())
            .flow(s.set().getHeatToCoolant(), CoolingWater.USUAL_RISE);
    }
}
