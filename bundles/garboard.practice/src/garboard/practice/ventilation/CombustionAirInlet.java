// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__AIR_FUEL_RATIO;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__COMBUSTION_AIR_FLOW;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_DEPRESSION;
import static garboard.model.GarboardPackage.Literals.VENTILATION__SUPPLY_AREA_TOTAL;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.GeneratorSet;
import garboard.model.Ventilation;
import garboard.physics.air.CombustionAir;
import garboard.physics.pipe.Medium;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.SetAtFullLoad;
import garboard.quantity.Area;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

/** The inlet lets in what the set breathes. */
final class CombustionAirInlet {

    /** Air of 25 degC, for what the set breathes. */
    private static final Temperature AIR = Temperature.of(25, "degC");

    private CombustionAirInlet() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-COMBUSTION-AIR", Ventilation.class)
            .title("Air inlet is wide enough for what the set breathes")
            .why("A set without air smokes, soots its exhaust and draws from the cabin.")
            .basis(Basis.derived("air of combustion, by typical figures from memory where the set's are not entered, "
                + "through an opening with K 2.5 at 63 Pa")
                .othersSay("170 m3/h for 40 hp: Marine Diesel Basics 1; 2.5 ft3/min for each hp: trade practice"))
            .gravity(Gravity.DEFECT)
            .limit("area through which the air of combustion comes with 63 Pa (0.25 inH2O), or with the maker's depression")
            .uses(GENERATOR_SET__COMBUSTION_AIR_FLOW, GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION, GENERATOR_SET__AIR_FUEL_RATIO,
                GENERATOR_SET__ASPIRATION, MAKER_LIMITS__MAXIMUM_DEPRESSION)
            .needsWhen(CombustionAirInlet::isReckoned, path(GENERATOR_SET__SHAFT_POWER))
            .needsWhen(CombustionAirInlet::isReckoned, path(GENERATOR_SET__FUEL))
            .needs(VENTILATION__SUPPLY_AREA_TOTAL)
            .holds(s -> Comparison.atLeast("the inlet has " + Figures.both(s.subject().getSupplyAreaTotal()) + "; the set breathes "
                + Figures.in(flow(s), "m3/min", "ft3/min"), s.subject().getSupplyAreaTotal(),
                Limit.of(least(s), "air of combustion at " + Figures.metric(Depression.limit(s).value()))))
            .remedy("Enlarge the air inlet", s -> {
                Area wanted = Rounding.up(least(s), 1, "cm2");
                return Optional.of(Remedy.of("Enlarge the air inlet to " + Figures.both(wanted))
                    .setting(s.subject(), VENTILATION__SUPPLY_AREA_TOTAL, wanted));
            })
            .build();
    }

    private static boolean isReckoned(Situation<Ventilation> s) {
        return s.optional(s.record().getGeneratorSet(), GeneratorSet::getCombustionAirFlow).isEmpty();
    }

    private static Area least(Situation<Ventilation> s) {
        return Depression.opening().leastArea(flow(s), Depression.limit(s).value());
    }

    private static VolumeFlow flow(Situation<Ventilation> s) {
        VolumeFlow makers = s.set().getCombustionAirFlow();
        return makers == null ? CombustionAir.of(SetAtFullLoad.combustion(s), Medium.AIR.at(AIR).density()) : makers;
    }
}
