// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.GeneratorSet;
import garboard.physics.ac.AcPower;
import garboard.practice.Figures;
import garboard.quantity.Power;

/** Active power, apparent power and power factor of the plate belong together. */
final class PlatePower {

    private static final double SPREAD = 0.03;

    private PlatePower() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-PLATE-POWER", GeneratorSet.class)
            .title("Kilowatts, kilovolt-amperes and power factor agree")
            .why("One of the three is misread, and with it every current, breaker and cable that is reckoned from it.")
            .basis(Basis.derived("P = S x power factor"))
            .gravity(Gravity.ADVICE)
            .limit("rated power within 3 % of apparent power times power factor: plates are rounded")
            .needs(GENERATOR_SET__RATED_POWER, GENERATOR_SET__RATED_APPARENT_POWER, GENERATOR_SET__RATED_POWER_FACTOR)
            .holds(s -> {
                Power product = AcPower.active(s.subject().getRatedApparentPower(), s.subject().getRatedPowerFactor());
                return Comparison.between("the plate gives " + Figures.both(s.subject().getRatedPower()) + "; "
                    + Figures.metric(s.subject().getRatedApparentPower()) + " times " + Figures.metric(s.subject().getRatedPowerFactor()) + " make "
                    + Figures.metric(product), s.subject().getRatedPower(), Limit.of(share(product, 1 - SPREAD), "S x power factor, less 3 %"),
                    Limit.of(share(product, 1 + SPREAD), "S x power factor and 3 %"));
            })
            .remedy("Read the plate again; the power factor is that of the rating, not of the load")
            .build();
    }

    private static Power share(Power power, double share) {
        return Power.of(share * power.si());
    }
}
