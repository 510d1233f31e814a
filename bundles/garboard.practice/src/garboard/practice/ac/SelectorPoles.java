// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_BOND;
import static garboard.model.GarboardPackage.Literals.TRANSFER_SWITCH__POLES;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.NeutralBond;
import garboard.model.PolesSwitched;
import garboard.model.TransferSwitch;

/** The selector takes the neutral along where the set has a bond of its own. */
final class SelectorPoles {

    private SelectorPoles() {
    }

    static Check<TransferSwitch> check() {
        return Check.check("AC-SELECTOR-POLES", TransferSwitch.class)
            .title("Selector switches the neutral with the live poles")
            .why("With the neutrals of shore and set joined for good the shore neutral is grounded aboard as well: its current runs through "
                + "bonding and water.")
            .basis(Basis.commonPractice().othersSay("ISO 13297, 13.2.1: supply circuits are double pole"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("all live poles and the neutral, where the set's neutral is bonded at the set or with the source")
            .applies(AcConditions.shoreSupply())
            .applies(bondedWithTheSet())
            .needs(TRANSFER_SWITCH__POLES)
            .holds(s -> {
                boolean all = s.subject().getPoles() == PolesSwitched.ALL_LIVE_AND_NEUTRAL;
                return Comparison.holds(all ? "all live poles and the neutral are switched" : "the neutral is not switched", all);
            })
            .remedy("Fit a selector with one pole more, for the neutral", s -> Optional.of(Remedy.of("Fit a selector that switches the neutral too")
                .setting(s.subject(), TRANSFER_SWITCH__POLES, PolesSwitched.ALL_LIVE_AND_NEUTRAL)))
            .build();
    }

    private static Condition<EObject> bondedWithTheSet() {
        return Condition.when("sets whose neutral is bonded at the set or with the source").known(path(AC_OUTPUT__NEUTRAL_BOND)).test(s -> {
            NeutralBond bond = s.record().getAcOutput().getNeutralBond();
            return bond == NeutralBond.AT_GENERATOR || bond == NeutralBond.SWITCHED_WITH_SOURCE;
        }, "the set has no neutral bond of its own");
    }
}
