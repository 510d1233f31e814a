// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SUPPORT_SPACING;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.CableRun;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 46 CFR 183.340(b)(4): metal supports at most 610 mm apart. */
final class SupportsOnPassengerVessel {

    private static final Length MOST = Length.of(610, "mm");

    private SupportsOnPassengerVessel() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-SUPPORT-46CFR", CableRun.class)
            .title("Cable is held at close intervals (small passenger vessels)")
            .why("A cable that swings chafes through and pulls at its lugs; plastic ties melt in a fire and let it fall.")
            .basis(Sources.cfr46("183.340(b)(4)"))
            .gravity(Gravity.DEFECT)
            .limit("metal supports at most 610 mm (24 in) apart; ties bundle cables and support none")
            .applies(Conditions.smallPassengerVessel())
            .needs(CABLE_RUN__SUPPORT_SPACING)
            .holds(s -> Comparison.atMost("a support every " + Figures.both(s.subject().getSupportSpacing()), s.subject().getSupportSpacing(),
                Limit.of(MOST, "46 CFR 183.340(b)(4)")))
            .remedy("Add metal supports", s -> Optional.of(Remedy.of("Hold the cable by metal supports every " + Figures.both(MOST))
                .setting(s.subject(), CABLE_RUN__SUPPORT_SPACING, MOST)))
            .build();
    }
}
