// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__DESIGN_AMBIENT;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PLATE_SHOWS_DERATED_POWER;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DESIGN_AMBIENT;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.GeneratorSet;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Temperature;

/** 46 CFR 183.320(b) and (d): a set is built for 50 degC, or its space never gets hotter than 40 degC, or its plate gives the derated capacity. */
final class BuiltForTheHeat {

    private static final Temperature LEAST = Temperature.of(40, "degC");

    private BuiltForTheHeat() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("AC-AMBIENT-183-320", GeneratorSet.class)
            .title("Set is built for the heat of its space (small passenger vessels)")
            .why("In more heat than it is built for a winding ages many times as fast.")
            .basis(Sources.cfr46("183.320(b) and (d)").othersSay("nothing is said of 41 to 49 degC, which count as 50, nor of more than 50"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("built for 50 degC (122 F), or for 40 degC (104 F) in a space that stays below that, or derated to 80 % on its plate")
            .applies(Conditions.smallPassengerVessel())
            .needs(GENERATOR_SET__DESIGN_AMBIENT)
            .needsWhen(HotSpace::matters, path(VENTILATION__DESIGN_AMBIENT))
            .needsWhen(BuiltForTheHeat::hotter, path(GENERATOR_SET__PLATE_SHOWS_DERATED_POWER))
            .holds(BuiltForTheHeat::compare)
            .remedy("Fit a plate with 80 % of the rating and a smaller breaker, or ventilate the space")
            .build();
    }

    private static boolean hotter(Situation<GeneratorSet> s) {
        return HotSpace.matters(s) && s.record().getVentilation().getDesignAmbient().isMoreThan(LEAST);
    }

    private static Comparison compare(Situation<GeneratorSet> s) {
        String built = "the set is built for " + Figures.both(s.subject().getDesignAmbient());
        if (s.subject().getDesignAmbient().isLessThan(LEAST)) {
            return Comparison.holds(built + ", less than the law knows", false);
        }
        if (!HotSpace.matters(s)) {
            return Comparison.holds(built, true);
        }
        String space = built + " and stands in a space of up to " + Figures.both(s.record().getVentilation().getDesignAmbient());
        if (!hotter(s)) {
            return Comparison.holds(space, true);
        }
        boolean derated = s.subject().getPlateShowsDeratedPower() == Answer.YES;
        return Comparison.holds(space + (derated ? "; its plate gives the derated capacity" : "; its plate does not give the derated capacity"), derated);
    }
}
