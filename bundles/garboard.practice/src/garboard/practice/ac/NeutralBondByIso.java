// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_BOND;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.AcOutput;
import garboard.model.Answer;
import garboard.model.NeutralBond;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** ISO 13297 6.8: the neutral of the set is joined to ground at the set, that of the shore is not joined to ground aboard. */
final class NeutralBondByIso {

    private NeutralBondByIso() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-NEUTRAL-BOND", AcOutput.class)
            .title("Neutral is joined to ground at the source in use only")
            .why("Without the bond no device sees a fault to ground; with a second one working current runs through hull, shafts and water.")
            .basis(Sources.ISO_13297_6_8.othersSay("ABYC E-11 asks for the same; 46 CFR 183.376: one bond, at the switchboard"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at the set, or switched with the source; at the switchboard only without a shore inlet or behind an isolation transformer")
            .applies(AcConditions.scopeOfIso13297())
            .applies(Conditions.unlessLawForPassengers("183.376"))
            .needs(AC_OUTPUT__NEUTRAL_BOND)
            .uses(AC_OUTPUT__SHORE_INLET_RESIDUAL_DEVICE)
            .holds(s -> compare(s.subject()))
            .remedy("Join neutral and ground at the set, and nowhere else",
                s -> Optional.of(Remedy.of("Join neutral and ground at the set, and open every other bond")
                    .setting(s.subject(), AC_OUTPUT__NEUTRAL_BOND, NeutralBond.AT_GENERATOR)))
            .build();
    }

    private static Comparison compare(AcOutput output) {
        return switch (output.getNeutralBond()) {
            case AT_GENERATOR -> Comparison.holds("the neutral is joined to ground at the set", true);
            case SWITCHED_WITH_SOURCE -> Comparison.holds("the bond is switched with the source", true);
            case AT_SWITCHBOARD -> output.getShoreInletResidualDevice() == Answer.NOT_APPLICABLE
                ? Comparison.holds("the neutral is joined to ground at the switchboard, and there is no shore inlet", true)
                : Comparison.holds("the neutral is joined to ground at the switchboard, where that of the shore is joined to it as well unless "
                    + "a transformer keeps the two apart", false);
            case SEVERAL -> Comparison.holds("the neutral is joined to ground at several places", false);
            case NONE, NOT_ENTERED -> Comparison.holds("the neutral is not joined to ground", false);
        };
    }
}
