// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_DEPRESSION;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DEPRESSION;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Figures;

/** The running set does not suck the compartment empty. */
final class DepressionMeasured {

    private DepressionMeasured() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-DEPRESSION-MEASURED", Ventilation.class)
            .title("Compartment is hardly below the outside pressure")
            .why("A set that starves for air draws it through the bilge and the cabin, and exhaust gas with it.")
            .basis(Basis.commonPractice().othersSay("125 Pa (0.5 inH2O) is the end of what is borne"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 63 Pa (0.25 inH2O) with everything running, or the maker's figure")
            .needs(VENTILATION__DEPRESSION)
            .uses(MAKER_LIMITS__MAXIMUM_DEPRESSION)
            .holds(s -> Comparison.atMost("the compartment is " + Figures.both(s.subject().getDepression()) + " below the outside",
                s.subject().getDepression(), Depression.limit(s)))
            .remedy("Enlarge the air inlet")
            .build();
    }
}
