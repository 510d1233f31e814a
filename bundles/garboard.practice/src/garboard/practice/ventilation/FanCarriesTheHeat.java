// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__AIR_FUEL_RATIO;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ALTERNATOR_EFFICIENCY;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__HEAT_TO_COMPARTMENT;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE;
import static garboard.model.GarboardPackage.Literals.VENTILATION__FAN_FLOW;

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
import garboard.physics.air.CompartmentHeat;
import garboard.physics.air.VentilationFlow;
import garboard.physics.fuel.TypicalEngine;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.SetAtFullLoad;
import garboard.quantity.Power;
import garboard.quantity.VolumeFlow;

/** The fan carries away what engine and alternator give to the compartment. */
final class FanCarriesTheHeat {

    private FanCarriesTheHeat() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-HEAT-FLOW", Ventilation.class)
            .title("Fan carries the set's heat away")
            .why("Heat that is not carried away warms the compartment until walls and deck lose as much: far too hot.")
            .basis(Basis.derived("heat balance of the compartment, with typical figures from memory where the set's are not entered; "
                + "the rise is that of Marine Diesel Basics 1 or the maker's"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("flow that carries the heat to the compartment with a rise of 16 K (30 degF) or the maker's rise")
            .applies(VentilationConditions.fanDriven())
            .uses(GENERATOR_SET__HEAT_TO_COMPARTMENT, GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION, GENERATOR_SET__AIR_FUEL_RATIO,
                GENERATOR_SET__ASPIRATION, MAKER_LIMITS__MAXIMUM_COMPARTMENT_RISE)
            .needsWhen(FanCarriesTheHeat::isReckoned, path(GENERATOR_SET__SHAFT_POWER))
            .needsWhen(FanCarriesTheHeat::isReckoned, path(GENERATOR_SET__RATED_POWER))
            .needsWhen(FanCarriesTheHeat::isReckoned, path(GENERATOR_SET__ALTERNATOR_EFFICIENCY))
            .needsWhen(FanCarriesTheHeat::isReckoned, path(GENERATOR_SET__FUEL))
            .needs(VENTILATION__FAN_FLOW)
            .holds(s -> Comparison.atLeast("the fan moves " + Figures.in(s.subject().getFanFlow(), "m3/min", "ft3/min") + "; "
                + Figures.both(heat(s)) + " are given to the compartment" + (isReckoned(s) ? ", reckoned from typical figures from memory" : ""),
                s.subject().getFanFlow(),
                Limit.of(least(s), "heat balance at a rise of " + Figures.metric(CompartmentRise.limit(s).value()))))
            .remedy("Fit a larger fan", s -> {
                VolumeFlow wanted = Rounding.up(least(s), 1, "m3/min");
                return Optional.of(Remedy.of("Fit a fan for " + Figures.in(wanted, "m3/min", "ft3/min"))
                    .setting(s.subject(), VENTILATION__FAN_FLOW, wanted));
            })
            .build();
    }

    private static boolean isReckoned(Situation<Ventilation> s) {
        return s.optional(s.record().getGeneratorSet(), GeneratorSet::getHeatToCompartment).isEmpty();
    }

    private static VolumeFlow least(Situation<Ventilation> s) {
        return VentilationFlow.forRise(heat(s), CompartmentRise.limit(s).value());
    }

    private static Power heat(Situation<Ventilation> s) {
        if (!isReckoned(s)) {
            return s.set().getHeatToCompartment();
        }
        TypicalEngine typical = SetAtFullLoad.typical(s);
        Power fuel = SetAtFullLoad.combustion(s).fuelPower(typical.heatingValue());
        return CompartmentHeat.of(fuel, typical.radiatedShare(),
            new CompartmentHeat.Alternator(s.set().getRatedPower(), s.set().getAlternatorEfficiency()));
    }
}
