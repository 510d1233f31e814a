// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MUFFLER__RESIDUE_FRACTION;
import static garboard.model.GarboardPackage.Literals.MUFFLER__VOLUME_TO_INLET;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.physics.exhaust.DrainBack;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Ratio;
import garboard.quantity.Volume;

/** The muffler holds what runs back into it when the set stops, with room to spare below its inlet. */
final class ExhaustDrainBack {

    private ExhaustDrainBack() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-DRAIN-BACK", ExhaustRun.class)
            .title("Muffler holds what drains back")
            .why("What the muffler cannot hold after a stop runs over into the hose to the engine.")
            .basis(Basis.commonPractice().othersSay("how full it gets is derived from the volumes of the hoses; some ask for three times the "
                + "riser's volume instead"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 80 % full up to the inlet, with all back-sloping hose drained into it on top of a residue of 25 % or the muffler's own")
            .applies(ExhaustConditions.liftMuffler())
            .needs(MufflerFilling.inputs())
            .needsWhen(s -> MufflerFilling.anyDrainsBack(s.subject()), MufflerFilling.inputsOfWhatDrainsBack())
            .uses(MUFFLER__RESIDUE_FRACTION)
            .holds(s -> {
                DrainBack filling = MufflerFilling.of(s.subject());
                return Comparison.atMost(Figures.both(filling.draining()) + " drain back into a muffler of " + Figures.both(filling.usable())
                    + " that keeps " + Figures.both(filling.residueShare()) + ": " + Figures.both(filling.filling()) + " full", filling.filling(),
                    Limit.of(DrainBack.USUAL_LIMIT, "common practice"));
            })
            .remedy("Fit a larger muffler, or shorten and lower the lift", ExhaustDrainBack::enlarge)
            .build();
    }

    private static Optional<Remedy> enlarge(Situation<ExhaustRun> s) {
        DrainBack filling = MufflerFilling.of(s.subject());
        Ratio room = Ratio.of(DrainBack.USUAL_LIMIT.si() - filling.residueShare().si());
        if (room.si() <= 0 || filling.draining().si() == 0) {
            return Optional.empty(); // no size helps a muffler that stays four fifths full while running
        }
        Volume enough = Rounding.up(filling.leastUsable(DrainBack.USUAL_LIMIT), 0.1, "L");
        return Optional.of(Remedy.of("Fit a muffler that holds " + Figures.both(enough) + " below its inlet, or shorten the hose that drains back to "
            + Figures.both(filling.greatestDraining(DrainBack.USUAL_LIMIT)) + " of content")
            .setting(s.subject().getMuffler(), MUFFLER__VOLUME_TO_INLET, enough));
    }
}
