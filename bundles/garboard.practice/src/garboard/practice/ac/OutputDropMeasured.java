// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__MEASURED_DROP;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.practice.Figures;

/** What the output cable loses as measured. */
final class OutputDropMeasured {

    private OutputDropMeasured() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-OUTPUT-DROP-MEASURED", AcOutput.class)
            .title("Output cable was measured to lose little voltage")
            .why("A drop beyond that of the copper sits in a bad joint, which grows hot.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("at most 3 % of the set's voltage under load, out and back")
            .needs(path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__MEASURED_DROP))
            .needs(GENERATOR_SET__RATED_VOLTAGE)
            .holds(s -> Comparison.atMost("the output cable takes " + Figures.both(s.subject().getOutputCable().getMeasuredDrop()),
                s.subject().getOutputCable().getMeasuredDrop(), OutputDrop.limit(s)))
            .remedy("Measure joint by joint; retighten or crimp the bad one anew")
            .build();
    }
}
