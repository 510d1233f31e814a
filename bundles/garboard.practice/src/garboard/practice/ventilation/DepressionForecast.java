// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__COMBUSTION_AIR_FLOW;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_DEPRESSION;
import static garboard.model.GarboardPackage.Literals.VENTILATION__FAN_FLOW;
import static garboard.model.GarboardPackage.Literals.VENTILATION__SUPPLY_AREA_TOTAL;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.GeneratorSet;
import garboard.model.Ventilation;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Area;
import garboard.quantity.PressureDifference;
import garboard.quantity.VolumeFlow;

/** The supply opening lets the fan's air in without much depression. */
final class DepressionForecast {

    private DepressionForecast() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-DEPRESSION-FORECAST", Ventilation.class)
            .title("Supply opening is wide enough for the fan")
            .why("A fan behind a narrow inlet moves little and pulls the compartment below the cabin's pressure.")
            .basis(Basis.derived("pressure loss of an opening with louvre, bend and trap, K 2.5; the limit of 63 Pa is common practice"))
            .gravity(Gravity.DEFECT)
            .limit("at most 63 Pa (0.25 inH2O) reckoned for fan and combustion air together, or the maker's figure")
            .applies(VentilationConditions.fanDriven())
            .needs(VENTILATION__FAN_FLOW, VENTILATION__SUPPLY_AREA_TOTAL)
            .uses(GENERATOR_SET__COMBUSTION_AIR_FLOW, MAKER_LIMITS__MAXIMUM_DEPRESSION)
            .holds(s -> {
                PressureDifference reckoned = Depression.opening().depression(flow(s), s.subject().getSupplyAreaTotal());
                return Comparison.atMost(Figures.in(flow(s), "m3/min", "ft3/min") + " through "
                    + Figures.both(s.subject().getSupplyAreaTotal()) + " make a depression of "
                    + Figures.both(reckoned), reckoned, Depression.limit(s));
            })
            .remedy("Enlarge the air inlet", s -> {
                Area wanted = Rounding.up(Depression.opening().leastArea(flow(s), Depression.limit(s).value()), 1, "cm2");
                return Optional.of(Remedy.of("Enlarge the air inlet to " + Figures.both(wanted))
                    .setting(s.subject(), VENTILATION__SUPPLY_AREA_TOTAL, wanted));
            })
            .build();
    }

    private static VolumeFlow flow(Situation<Ventilation> s) {
        double combustion = s.optional(s.record().getGeneratorSet(), GeneratorSet::getCombustionAirFlow).map(VolumeFlow::si).orElse(0.0);
        return VolumeFlow.of(s.subject().getFanFlow().si() + combustion);
    }
}
