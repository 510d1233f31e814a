// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.FUEL_LINE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineRun;
import garboard.physics.pipe.HoseSize;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 46 CFR 182.450, from memory: the least vent of a fuel tank, given there as a tube. */
final class VentBoreOfPassengerVessel {

    /** Tube of 0.75 in outside diameter with a wall of 0.035 in. */
    private static final Length GASOLINE = Length.of(0.68, "in");

    /** Tube of 0.625 in outside diameter with a wall of 0.035 in. */
    private static final Length DIESEL = Length.of(0.555, "in");

    private VentBoreOfPassengerVessel() {
    }

    static Check<FuelLineRun> check() {
        return Check.check("FUEL-VENT-BORE-182-450", FuelLineRun.class)
            .among(line -> line.getFunction() == FuelLineFunction.VENT, path(FUEL_LINE_RUN__FUNCTION))
            .title("Tank vent is wide enough (small passenger vessels)")
            .why("A narrow vent lets the tank spit while it is filled, and starves the engine while it empties.")
            .basis(Sources.cfr46FromMemory("182.450").othersSay("a tank that is filled under pressure needs the area of its fill pipe"))
            .gravity(Gravity.DEFECT)
            .limit("gasoline 17.3 mm (0.68 in) bore, diesel 14.1 mm (0.555 in): 234 and 156 mm2")
            .applies(Conditions.smallPassengerVessel())
            .needs(path(FUEL_LINE_RUN__BORE), path(GENERATOR_SET__FUEL))
            .holds(s -> Comparison.atLeast("the vent has a bore of " + Figures.both(s.subject().getBore()), s.subject().getBore(),
                Limit.of(least(s), "46 CFR 182.450, from memory")))
            .remedy("Fit a wider vent", s -> HoseSize.atLeast(least(s)).map(size -> Remedy.of("Fit a vent of " + size.name() + " bore")
                .setting(s.subject(), FUEL_LINE_RUN__BORE, size.bore())))
            .build();
    }

    private static Length least(Situation<FuelLineRun> s) {
        return FuelFigures.isGasoline(s) ? GASOLINE : DIESEL;
    }
}
