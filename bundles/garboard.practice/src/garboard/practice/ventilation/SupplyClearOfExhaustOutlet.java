// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.model.GarboardPackage.Literals.VENTILATION__CLEAR_OF_EXHAUST_OUTLET;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.Ventilation;
import garboard.practice.Answers;
import garboard.practice.Conditions;

/** The supply opening does not draw the set's own exhaust. */
final class SupplyClearOfExhaustOutlet {

    private SupplyClearOfExhaustOutlet() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-CLEAR-OF-EXHAUST", Ventilation.class)
            .title("Supply opening is clear of the exhaust outlet")
            .why("An inlet near the outlet draws carbon monoxide into the compartment and from there into the cabin.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("no exhaust outlet near the supply opening, nor upwind of it at rest")
            .applies(Conditions.asked(VENTILATION__CLEAR_OF_EXHAUST_OUTLET))
            .needs(VENTILATION__CLEAR_OF_EXHAUST_OUTLET)
            .holds(s -> Answers.yes(s.subject().getClearOfExhaustOutlet(), "the supply opening is clear of the exhaust outlet",
                "the supply opening is near the exhaust outlet"))
            .remedy("Move the supply opening or the outlet")
            .build();
    }
}
