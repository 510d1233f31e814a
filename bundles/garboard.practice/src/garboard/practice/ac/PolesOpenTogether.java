// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_BOND;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_POLES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.model.NeutralBond;
import garboard.practice.Sources;

/** One handle opens all live conductors. */
final class PolesOpenTogether {

    private PolesOpenTogether() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-POLES", AcOutput.class)
            .title("Main breaker opens all live conductors together")
            .why("A conductor that stays closed keeps half the boat live and lets a three-phase motor burn on two phases.")
            .basis(Sources.yardstick("46 CFR 28.860(d)"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("single-phase 1 pole where the neutral is grounded, else 2; split-phase 2; three-phase 3")
            .applies(AcConditions.deviceFitted())
            .needs(AC_OUTPUT__PROTECTION_POLES, GENERATOR_SET__PHASES, AC_OUTPUT__NEUTRAL_BOND)
            .holds(s -> {
                int poles = s.subject().getProtectionPoles();
                int live = live(s);
                return Comparison.holds(Poles.inWords(poles) + ", and the set has " + Poles.conductors(live), poles >= live);
            })
            .remedy("Fit a breaker with a pole for each live conductor", s -> Optional.of(Remedy.of("Fit a breaker of " + Poles.poles(live(s)))
                .setting(s.subject(), AC_OUTPUT__PROTECTION_POLES, live(s))))
            .build();
    }

    /** Without a bond the second conductor of a single-phase set is as live as the first. */
    private static int live(Situation<AcOutput> s) {
        return switch (s.set().getPhases()) {
            case THREE_PHASE -> 3;
            case SPLIT_PHASE -> 2;
            case SINGLE_PHASE, NOT_ENTERED -> s.subject().getNeutralBond() == NeutralBond.NONE ? 2 : 1;
        };
    }
}
