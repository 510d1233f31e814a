// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.GeneratorSet;
import garboard.physics.fuel.Combustion;
import garboard.physics.fuel.FuelEndurance;
import garboard.physics.fuel.TypicalEngine;
import garboard.practice.Figures;
import garboard.practice.SetAtFullLoad;
import garboard.quantity.VolumeFlow;

/** Fuel at full load, shaft power and specific consumption belong together. */
final class FuelFiguresAgree {

    private static final double SPREAD = 0.10;

    private FuelFiguresAgree() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-FUEL", GeneratorSet.class)
            .title("Fuel at full load agrees with power and specific consumption")
            .why("Endurance, air, heat and exhaust are reckoned from these three; one that is wrong spoils them all.")
            .basis(Basis.derived("burn = shaft power x specific consumption / density of the fuel (gasoline 745, diesel 840 kg/m3)"))
            .gravity(Gravity.ADVICE)
            .limit("within 10 %: densities and data sheets differ")
            .needs(GENERATOR_SET__FUEL_CONSUMPTION_FULL_LOAD, GENERATOR_SET__SHAFT_POWER, GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION,
                GENERATOR_SET__FUEL)
            .holds(s -> {
                VolumeFlow reckoned = reckoned(s);
                return Comparison.between("the set burns " + Figures.both(s.subject().getFuelConsumptionFullLoad()) + "; "
                    + Figures.both(s.subject().getShaftPower()) + " at " + Figures.metric(s.subject().getSpecificFuelConsumption()) + " make "
                    + Figures.both(reckoned), s.subject().getFuelConsumptionFullLoad(),
                    Limit.of(VolumeFlow.of((1 - SPREAD) * reckoned.si()), "reckoned burn less 10 %"),
                    Limit.of(VolumeFlow.of((1 + SPREAD) * reckoned.si()), "reckoned burn and 10 %"));
            })
            .remedy("Read the data sheet again; look at which power each figure belongs to")
            .build();
    }

    private static VolumeFlow reckoned(Situation<GeneratorSet> s) {
        TypicalEngine typical = SetAtFullLoad.typical(s);
        return FuelEndurance.burn(new Combustion(s.subject().getShaftPower(), s.subject().getSpecificFuelConsumption(), typical.airFuelRatio()),
            typical.fuelDensity());
    }
}
