// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Check;
import garboard.checks.Situation;
import garboard.model.GeneratorSet;
import garboard.model.PhaseSystem;
import garboard.physics.ac.AcPower;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;

/** What the set gives at its rating, by its plate: apparent power, or active power and power factor; voltage between the lines; phases. */
final class FullLoad {

    private FullLoad() {
    }

    /** Declares what {@link #current} and {@link #apparent} read. */
    static <S extends EObject> Check.Builder<S> needed(Check.Builder<S> check) {
        return apparentNeeded(check).needs(GENERATOR_SET__RATED_VOLTAGE, GENERATOR_SET__PHASES);
    }

    /** Declares what {@link #apparent} reads. */
    static <S extends EObject> Check.Builder<S> apparentNeeded(Check.Builder<S> check) {
        return check.uses(GENERATOR_SET__RATED_APPARENT_POWER)
            .needsWhen(s -> noApparentPower(s), path(GENERATOR_SET__RATED_POWER), path(GENERATOR_SET__RATED_POWER_FACTOR));
    }

    private static boolean noApparentPower(Situation<?> s) {
        return s.optional(s.record().getGeneratorSet(), GeneratorSet::getRatedApparentPower).isEmpty();
    }

    /** Whether {@link #apparent} has what it reads; for conditions, which are asked before what is missing is told. */
    static boolean isKnown(Situation<?> s) {
        GeneratorSet set = s.record().getGeneratorSet();
        return set != null && (set.getRatedApparentPower() != null || set.getRatedPower() != null && set.getRatedPowerFactor() != null);
    }

    /** Whether {@link #current} has what it reads. */
    static boolean isKnownAsCurrent(Situation<?> s) {
        return isKnown(s) && s.set().getRatedVoltage() != null && s.set().getPhases() != PhaseSystem.NOT_ENTERED;
    }

    static ApparentPower apparent(Situation<?> s) {
        return noApparentPower(s) ? AcPower.apparent(s.set().getRatedPower(), s.set().getRatedPowerFactor()) : s.set().getRatedApparentPower();
    }

    static Current current(Situation<?> s) {
        return AcPower.current(apparent(s), s.set().getRatedVoltage(), phases(s));
    }

    static garboard.physics.ac.PhaseSystem phases(Situation<?> s) {
        return garboard.physics.ac.PhaseSystem.valueOf(s.set().getPhases().name());
    }
}
