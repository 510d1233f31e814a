// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SHEATHED_TO_PROTECTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SUPPORT_SPACING;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** ISO 10133: a support every 450 mm, every 300 mm for battery cables and sheathed cables. */
final class SupportsByIso {

    private static final Length USUAL = Length.of(450, "mm");
    private static final Length BATTERY_OR_SHEATHED = Length.of(300, "mm");

    private SupportsByIso() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-SUPPORT-ISO", CableRun.class)
            .title("Cable is held at close intervals")
            .why("A cable that swings chafes through and pulls at its lugs.")
            .basis(Sources.ISO_10133_CABLES.othersSay("46 CFR 183.340(b)(4): 610 mm (24 in)"))
            .gravity(Gravity.DEFECT)
            .limit("every 450 mm (17.7 in); battery cables and sheathed cables every 300 mm (11.8 in), the first within 1 m of the terminal")
            .applies(CableConditions.scopeOfIso13297())
            .needsWhen(CableConditions::alternates, path(GENERATOR_SET__PHASES))
            .needs(CABLE_RUN__SUPPORT_SPACING)
            .needsWhen(s -> !CableRuns.isOutputCable(s.subject()), path(CABLE_RUN__FUNCTION))
            .needsWhen(SupportsByIso::mayStartAtBattery, path(CABLE_RUN__CONNECTED_TO_BATTERY_TERMINAL))
            .uses(CABLE_RUN__SHEATHED_TO_PROTECTION)
            .holds(s -> Comparison.atMost("a support every " + Figures.both(s.subject().getSupportSpacing()), s.subject().getSupportSpacing(),
                limit(s)))
            .remedy("Add clips or saddles", s -> Optional.of(Remedy.of("Hold the cable every " + Figures.both(limit(s).value()))
                .setting(s.subject(), CABLE_RUN__SUPPORT_SPACING, limit(s).value())))
            .build();
    }

    /** Cranking cables do, the output cable does not; of all others it has to be known. */
    private static boolean mayStartAtBattery(Situation<CableRun> s) {
        return !CableRuns.isOutputCable(s.subject()) && !CableRuns.isCranking(s.subject());
    }

    private static Limit<Length> limit(Situation<CableRun> s) {
        CableRun run = s.subject();
        boolean cranking = !CableRuns.isOutputCable(run) && CableRuns.isCranking(run);
        boolean fromBattery = mayStartAtBattery(s) && run.getConnectedToBatteryTerminal() == Answer.YES;
        return Limit.of(cranking || fromBattery || run.getSheathedToProtection() == Answer.YES ? BATTERY_OR_SHEATHED : USUAL, "ISO 10133 clause 7");
    }
}
