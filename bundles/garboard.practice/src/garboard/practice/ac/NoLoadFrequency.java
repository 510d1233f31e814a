// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NO_LOAD_FREQUENCY;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PERFORMANCE_CLASS;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_FREQUENCY;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.physics.ac.NoLoadCheck;
import garboard.practice.Figures;
import garboard.practice.Sources;

/** The frequency without load, by the class that the set is declared for. */
final class NoLoadFrequency {

    private NoLoadFrequency() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-NO-LOAD-FREQUENCY", AcOutput.class)
            .title("Frequency without load is within the set's class")
            .why("A governor that is set too high runs motors and clocks too fast; one set too low has nothing left at full load.")
            .basis(Sources.DGUV_203_032)
            .gravity(Gravity.DEFECT)
            .limit("rated frequency and 8 % (G1), 5 % (G2) or 3 % (G3)")
            .applies(NoLoad.classWithFigures())
            .needs(AC_OUTPUT__NO_LOAD_FREQUENCY, GENERATOR_SET__RATED_FREQUENCY, GENERATOR_SET__PERFORMANCE_CLASS)
            .holds(s -> Comparison.atMost("without load the set gives " + Figures.both(s.subject().getNoLoadFrequency()),
                s.subject().getNoLoadFrequency(), Limit.of(NoLoadCheck.highestFrequency(s.set().getRatedFrequency(), NoLoad.wanted(s)), NoLoad.origin(s))))
            .remedy("Set the governor's no-load speed lower")
            .build();
    }
}
