// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__EXHAUST_GAS_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__EXHAUST_MASS_FLOW;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__HEAT_TO_COOLANT;
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
import garboard.model.WaterPump;
import garboard.physics.rawwater.GasCooling;
import garboard.physics.rawwater.HeatOverboard;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Temperature;

/** By heat balance, the rated flow carries coolant and exhaust heat overboard below 60 degC in the warmest sea. */
final class OverboardTemperatureForecast {

    private static final Temperature LIMIT = OverboardTemperatureMeasured.INVESTIGATE_ABOVE;

    private OverboardTemperatureForecast() {
    }

    static Check<WaterPump> check() {
        return Check.check("RAWWATER-OVERBOARD-FORECAST", WaterPump.class)
            .title("Rated flow keeps the water overboard cool in the warmest sea")
            .why("A set that is only just cool enough in spring water cooks its exhaust hose in the tropics.")
            .basis(Basis.derived("heat balance of raw water, coolant and exhaust gas; the limit of 60 degC is common practice"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 60 degC (140 degF) overboard at the design sea temperature, with the gas cooled to 60 degC")
            .applies(RawWaterConditions.cooledBySeaWater())
            .needs(WATER_PUMP__RATED_FLOW, RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE, GENERATOR_SET__HEAT_TO_COOLANT,
                GENERATOR_SET__EXHAUST_MASS_FLOW, GENERATOR_SET__EXHAUST_GAS_TEMPERATURE)
            .holds(s -> {
                HeatOverboard heat = heat(s);
                Temperature overboard = heat.temperature(s.subject().getRatedFlow());
                return Comparison.atMost("with " + Figures.both(s.subject().getRatedFlow()) + " in a sea of "
                    + Figures.both(heat.sea()) + " the water leaves with " + Figures.both(overboard), overboard,
                    Limit.of(LIMIT, "common practice"));
            })
            .remedy("Fit a pump for more water", s -> {
                HeatOverboard heat = heat(s);
                if (!LIMIT.isMoreThan(heat.sea())) {
                    return Optional.empty();
                }
                var flow = Rounding.up(heat.leastFlow(LIMIT), 1, "L/min");
                return Optional.of(Remedy.of("Fit a pump for at least " + Figures.both(flow))
                    .setting(s.subject(), WATER_PUMP__RATED_FLOW, flow));
            })
            .build();
    }

    private static HeatOverboard heat(Situation<WaterPump> s) {
        Temperature before = s.set().getExhaustGasTemperature();
        // Gas that leaves the engine cooler than the limit is not warmed by the water.
        Temperature mixed = before.isLessThan(LIMIT) ? before : LIMIT;
        return HeatOverboard.ofCoolant(s.set().getHeatToCoolant(), s.record().getRawWater().getDesignSeaTemperature())
            .withExhaust(GasCooling.from(s.set().getExhaustMassFlow(), before).to(mixed));
    }
}
