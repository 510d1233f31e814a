// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_BOND;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.AcOutput;
import garboard.model.NeutralBond;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Outside the scope of ISO 13297 and of the law: one connection between neutral and ground. */
final class NeutralBondedOnce {

    private NeutralBondedOnce() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-NEUTRAL-ONCE", AcOutput.class)
            .title("Neutral of a three-phase set is joined to ground at one place")
            .why("With a second bond working current runs through hull, shafts and water, and a device misses part of a fault.")
            .basis(Sources.yardstick("46 CFR 183.376").othersSay("IEC 60092-507 governs three phases on small craft; its text was not seen"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("one ground connection, whatever the number of sources")
            .applies(AcConditions.threePhase())
            .applies(Conditions.unlessLawForPassengers("183.376"))
            .applies(AcConditions.grounded())
            .needs(AC_OUTPUT__NEUTRAL_BOND)
            .holds(s -> {
                boolean once = s.subject().getNeutralBond() != NeutralBond.SEVERAL;
                return Comparison.holds(once ? "the neutral is joined to ground at one place" : "the neutral is joined to ground at several places",
                    once);
            })
            .remedy("Open every bond but one")
            .build();
    }
}
