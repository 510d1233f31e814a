// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.GeneratorSet;
import garboard.physics.fuel.TypicalEngine;
import garboard.practice.Figures;
import garboard.practice.SetAtFullLoad;

/** The specific consumption is one that engines of its kind have. */
final class ConsumptionTypical {

    private ConsumptionTypical() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-CONSUMPTION", GeneratorSet.class)
            .title("Specific consumption is usual for an engine of this kind")
            .why("A figure that no engine has was misread, or belongs to part load.")
            .basis(Basis.derived("range of typical small engines at full load, from memory"))
            .gravity(Gravity.ADVICE)
            .limit("diesel naturally aspirated 230 to 290, turbocharged 205 to 240, gasoline 300 to 420 g/kWh at the shaft")
            .needs(GENERATOR_SET__SPECIFIC_FUEL_CONSUMPTION, GENERATOR_SET__FUEL)
            .uses(GENERATOR_SET__ASPIRATION)
            .holds(s -> {
                TypicalEngine typical = SetAtFullLoad.typical(s);
                return Comparison.between("the engine burns " + Figures.both(s.subject().getSpecificFuelConsumption()),
                    s.subject().getSpecificFuelConsumption(), Limit.of(typical.leastConsumption(), "typical engines, from memory"),
                    Limit.of(typical.greatestConsumption(), "typical engines, from memory"));
            })
            .remedy("Read the data sheet again: grams for a kilowatt-hour at the shaft, at full load")
            .build();
    }
}
