// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__POLES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_FREQUENCY;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_SPEED;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.GeneratorSet;
import garboard.physics.ac.SynchronousSpeed;
import garboard.practice.Figures;
import garboard.quantity.RotationalSpeed;

/** Speed, poles and frequency of the plate belong together. */
final class PlateSpeed {

    private static final double SPREAD = 0.01;

    private PlateSpeed() {
    }

    static Check<GeneratorSet> check() {
        return Check.check("SET-PLATE-SPEED", GeneratorSet.class)
            .title("Speed, poles and frequency agree")
            .why("One of the three is misread, and pump flow, cranking and governor are reckoned from a wrong speed.")
            .basis(Basis.derived("n = 120 f / poles in r/min; a set with an inverter or a belt is outside it"))
            .gravity(Gravity.ADVICE)
            .limit("rated speed within 1 % of 120 f / poles: 1500, 1800, 3000 or 3600 r/min")
            .needs(GENERATOR_SET__RATED_SPEED, GENERATOR_SET__RATED_FREQUENCY, GENERATOR_SET__POLES)
            .holds(s -> {
                RotationalSpeed synchronous = SynchronousSpeed.speed(s.subject().getRatedFrequency(), s.subject().getPoles());
                return Comparison.between("the plate gives " + Figures.both(s.subject().getRatedSpeed()) + "; " + s.subject().getPoles() + " poles at "
                    + Figures.metric(s.subject().getRatedFrequency()) + " turn at " + Figures.metric(synchronous), s.subject().getRatedSpeed(),
                    Limit.of(share(synchronous, 1 - SPREAD), "120 f / poles, less 1 %"), Limit.of(share(synchronous, 1 + SPREAD), "120 f / poles and 1 %"));
            })
            .remedy("Read the plate again", s -> {
                RotationalSpeed synchronous = SynchronousSpeed.speed(s.subject().getRatedFrequency(), s.subject().getPoles());
                return Optional.of(Remedy.of("Read the plate again: " + s.subject().getPoles() + " poles turn at " + Figures.metric(synchronous))
                    .setting(s.subject(), GENERATOR_SET__RATED_SPEED, synchronous));
            })
            .build();
    }

    private static RotationalSpeed share(RotationalSpeed speed, double share) {
        return RotationalSpeed.of(share * speed.si());
    }
}
