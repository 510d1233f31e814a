// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PERFORMANCE_CLASS;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Condition;
import garboard.checks.Situation;
import garboard.model.PerformanceClass;
import garboard.physics.ac.SetTraits;
import garboard.quantity.Power;

/** The set without load, seen by its performance class. */
final class NoLoad {

    private static final Power SMALL = Power.of(10, "kW");

    private NoLoad() {
    }

    static Condition<EObject> classWithFigures() {
        return Condition.when("sets of class G1, G2 or G3").known(path(GENERATOR_SET__PERFORMANCE_CLASS))
            .test(s -> s.set().getPerformanceClass() != PerformanceClass.G4, "class G4 is by agreement and has no figures");
    }

    static garboard.physics.ac.PerformanceClass wanted(Situation<?> s) {
        return garboard.physics.ac.PerformanceClass.valueOf(s.set().getPerformanceClass().name());
    }

    /** The size counts in class G1 only, and has to be entered there. */
    static SetTraits traits(Situation<?> s) {
        boolean small = s.set().getPerformanceClass() == PerformanceClass.G1 && !s.set().getRatedPower().isMoreThan(SMALL);
        return small ? SetTraits.ordinary().withUpTo10Kilowatt() : SetTraits.ordinary();
    }

    static String origin(Situation<?> s) {
        return "DGUV Information 203-032, class " + s.set().getPerformanceClass().getName();
    }
}
