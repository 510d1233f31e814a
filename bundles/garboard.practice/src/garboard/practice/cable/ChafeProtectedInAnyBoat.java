// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CHAFE_PROTECTED;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.CableRun;
import garboard.practice.Answers;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** Conductors are protected where they pass through rigid parts. */
final class ChafeProtectedInAnyBoat {

    private ChafeProtectedInAnyBoat() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-CHAFE", CableRun.class)
            .title("Conductor cannot chafe")
            .why("Vibration saws a cable through at the edge of every hole, and the bare copper finds the engine.")
            .basis(Sources.yardstick("33 CFR 183.445"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("protected from chafe where it passes through rigid parts")
            .applies(Conditions.boatWithoutGasolineEngine())
            .applies(Conditions.asked(CABLE_RUN__CHAFE_PROTECTED))
            .needs(CABLE_RUN__CHAFE_PROTECTED)
            .holds(s -> Answers.yes(s.subject().getChafeProtected(), "the conductor is protected wherever it can chafe", "the conductor can chafe"))
            .remedy("Fit grommets, sleeves and clips where the conductor touches an edge")
            .build();
    }
}
