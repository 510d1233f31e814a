// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PLANNED_LOAD_POWER;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__PLANNED_RUN_TIME;
import static garboard.model.GarboardPackage.Literals.FUEL_TANK__CAPACITY;
import static garboard.model.GarboardPackage.Literals.FUEL_TANK__USABLE_FRACTION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ALTERNATOR_EFFICIENCY;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelSupply;
import garboard.model.FuelTank;
import garboard.physics.fuel.Combustion;
import garboard.physics.fuel.FuelEndurance;
import garboard.physics.fuel.TypicalEngine;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.SetAtFullLoad;
import garboard.quantity.Ratio;
import garboard.quantity.SpecificConsumption;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/** The tank lasts for the planned running time with a reserve. */
final class Endurance {

    private Endurance() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-ENDURANCE", FuelSupply.class)
            .title("Tank lasts for the planned running time")
            .why("A tank that is run empty draws air and sludge, and the set has to be bled at sea.")
            .basis(Basis.derived("burn from load and specific consumption, a typical one from memory where the set's is not entered; "
                + "the reserve of 20 % is common practice"))
            .gravity(Gravity.ADVICE)
            .limit("planned running time and 20 % over it")
            .needs(FUEL_TANK__CAPACITY, FUEL_SUPPLY__PLANNED_RUN_TIME, FUEL_SUPPLY__PLANNED_LOAD_POWER,
                GENERATOR_SET__ALTERNATOR_EFFICIENCY, GENERATOR_SET__FUEL)
            .uses(FUEL_TANK__USABLE_FRACTION, GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION, GENERATOR_SET__ASPIRATION)
            .holds(s -> Comparison.atLeast("the tank lasts " + Figures.metric(lasts(s)) + " at " + Figures.both(burn(s))
                + (s.set().getSpecificFuelConsumption() == null ? ", by typical consumption from memory" : ""), lasts(s),
                Limit.of(TimeSpan.of(planned(s).si() * (1 + FuelEndurance.USUAL_RESERVE.si())), "planned time and 20 %")))
            .remedy("A larger tank or a day tank", s -> {
                var shares = FuelEndurance.Shares.usual().withUsable(usable(s));
                Volume tank = Rounding.up(FuelEndurance.leastTank(planned(s), burn(s), shares), 5, "L");
                return Optional.of(Remedy.of("A tank of " + Figures.both(tank) + " would last")
                    .setting(s.subject().getTank(), FUEL_TANK__CAPACITY, tank));
            })
            .build();
    }

    private static TimeSpan lasts(Situation<FuelSupply> s) {
        return FuelEndurance.lasts(s.subject().getTank().getCapacity(), usable(s), burn(s));
    }

    private static VolumeFlow burn(Situation<FuelSupply> s) {
        TypicalEngine typical = SetAtFullLoad.typical(s);
        SpecificConsumption own = s.set().getSpecificFuelConsumption();
        var shaft = Combustion.shaftPower(s.subject().getPlannedLoadPower(), s.set().getAlternatorEfficiency());
        var engine = new Combustion(shaft, own == null ? typical.consumption() : own, typical.airFuelRatio());
        return FuelEndurance.burn(engine, FuelFigures.density(s));
    }

    private static TimeSpan planned(Situation<FuelSupply> s) {
        return s.subject().getPlannedRunTime();
    }

    private static Ratio usable(Situation<FuelSupply> s) {
        return s.optional(s.subject().getTank(), FuelTank::getUsableFraction).orElse(FuelEndurance.USUAL_USABLE);
    }
}
