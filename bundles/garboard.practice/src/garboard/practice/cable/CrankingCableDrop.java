// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__MEASURED_DROP;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.CableRun;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** The rule of thumb for a single cranking cable as measured. */
final class CrankingCableDrop {

    private static final Voltage MOST = Voltage.of(0.2, "V");

    private CrankingCableDrop() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-CRANKING-RUN-DROP", CableRun.class)
            .among(run -> CableRuns.isCranking(run), path(CABLE_RUN__FUNCTION))
            .title("Each cranking cable loses little voltage under the starter")
            .why("One bad lug or one thin cable takes the voltage that the starter needs, and grows hot.")
            .basis(Basis.commonPractice().othersSay("0.1 V for a single joint"))
            .gravity(Gravity.DEFECT)
            .limit("at most 0.2 V along one cable while cranking on 12 V")
            .applies(CrankingCircuit.startsOn12V())
            .needs(CABLE_RUN__MEASURED_DROP)
            .holds(s -> Comparison.atMost("the cable takes " + Figures.both(s.subject().getMeasuredDrop()) + " while cranking",
                s.subject().getMeasuredDrop(), Limit.of(MOST, "common practice")))
            .remedy("Clean the lugs and crimp them anew; lay a larger cable if the copper itself takes it")
            .build();
    }
}
