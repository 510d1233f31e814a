// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NEUTRAL_BOND;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__PROTECTION_POLES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.model.AcOutput;
import garboard.model.NeutralBond;
import garboard.model.PhaseSystem;
import garboard.practice.Sources;

/** ISO 13297 13.2.1: supply circuits are double pole. */
final class DoublePole {

    private static final int LEAST = 2;

    private DoublePole() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-POLES-ISO", AcOutput.class)
            .title("Main breaker opens live conductor and neutral")
            .why("With polarity crossed a single pole opens the neutral and leaves the boat live.")
            .basis(Sources.ISO_13297_13_2_1.othersSay("46 CFR 28.860(d): all ungrounded conductors together"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at least 2 poles")
            .applies(AcConditions.scopeOfIso13297())
            .applies(AcConditions.deviceFitted())
            .applies(singlePhaseWithBond())
            .needs(AC_OUTPUT__PROTECTION_POLES)
            .holds(s -> Comparison.holds(Poles.inWords(s.subject().getProtectionPoles()), s.subject().getProtectionPoles() >= LEAST))
            .remedy("Fit a double-pole breaker", s -> Optional.of(Remedy.of("Fit a double-pole breaker")
                .setting(s.subject(), AC_OUTPUT__PROTECTION_POLES, LEAST)))
            .build();
    }

    /** Of all others the number of live conductors asks for two poles anyway, and is told there. */
    private static Condition<AcOutput> singlePhaseWithBond() {
        return Condition.<AcOutput>when("single-phase sets with a grounded neutral").known(path(GENERATOR_SET__PHASES), path(AC_OUTPUT__NEUTRAL_BOND))
            .test(s -> s.set().getPhases() == PhaseSystem.SINGLE_PHASE && s.subject().getNeutralBond() != NeutralBond.NONE,
                "there are two live conductors, which the breaker has to open anyway");
    }
}
