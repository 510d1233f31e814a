// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__INSULATION_RESISTANCE;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Resistance;

/** The installation's insulation resistance at 500 V d.c. */
final class Insulation {

    static final Resistance LEAST = Resistance.of(1, "Mohm");

    private Insulation() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-INSULATION", AcOutput.class)
            .title("Insulation of the AC installation is sound")
            .why("Damp or chafed insulation lets current leak into hull and cases, and becomes the short of tomorrow.")
            .basis(Sources.BS_7671.othersSay("0.5 Mohm in older wiring rules"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least 1 Mohm at 500 V d.c.; regulator, chargers and surge arresters disconnected")
            .needs(AC_OUTPUT__INSULATION_RESISTANCE)
            .holds(s -> Comparison.atLeast("the insulation has " + Figures.both(s.subject().getInsulationResistance()),
                s.subject().getInsulationResistance(), Limit.of(LEAST, "BS 7671")))
            .remedy("Dry and clean it; disconnect circuit by circuit to find the faulty one")
            .build();
    }
}
