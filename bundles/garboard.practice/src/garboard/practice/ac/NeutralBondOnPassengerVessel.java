// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_BOND;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.AcOutput;
import garboard.model.NeutralBond;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 183.376: one connection between neutral and ground, at the switchboard or an accessible ground plate, whatever the number of sources. */
final class NeutralBondOnPassengerVessel {

    private NeutralBondOnPassengerVessel() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-NEUTRAL-BOND-183-376", AcOutput.class)
            .title("Neutral is joined to ground once, at the switchboard (small passenger vessels)")
            .why("With a second bond working current runs through hull, shafts and water, and a device misses part of a fault.")
            .basis(Sources.cfr46("183.376").othersSay("ISO 13297, 6.8: at the set"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("one ground connection, at the switchboard or the common ground plate")
            .applies(Conditions.smallPassengerVessel())
            .applies(AcConditions.grounded())
            .needs(AC_OUTPUT__NEUTRAL_BOND)
            .holds(s -> compare(s.subject().getNeutralBond()))
            .remedy("Open every bond but the one at the switchboard",
                s -> Optional.of(Remedy.of("Join neutral and ground at the switchboard, and open every other bond")
                    .setting(s.subject(), AC_OUTPUT__NEUTRAL_BOND, NeutralBond.AT_SWITCHBOARD)))
            .build();
    }

    private static Comparison compare(NeutralBond bond) {
        return switch (bond) {
            case AT_SWITCHBOARD -> Comparison.holds("the neutral is joined to ground once, at the switchboard", true);
            case AT_GENERATOR -> Comparison.holds("the neutral is joined to ground at the set", false);
            case SWITCHED_WITH_SOURCE -> Comparison.holds("the bond changes its place with the source", false);
            case SEVERAL -> Comparison.holds("the neutral is joined to ground at several places", false);
            case NONE, NOT_ENTERED -> Comparison.holds("the neutral is not joined to ground", false);
        };
    }
}
