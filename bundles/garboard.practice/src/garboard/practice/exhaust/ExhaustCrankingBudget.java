// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME;
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
import garboard.model.MakerLimits;
import garboard.physics.exhaust.CrankingFlood;
import garboard.physics.exhaust.DrainBack;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;

/** The muffler has room for as much cranking as people allow themselves: the pump fills it while the engine does not fire. */
final class ExhaustCrankingBudget {

    private ExhaustCrankingBudget() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-CRANKING-BUDGET", ExhaustRun.class)
            .title("Muffler has room for the usual cranking")
            .why("While the starter turns, the raw-water pump fills a muffler that no gas empties; when it is full, the engine is next.")
            .basis(Basis.commonPractice().othersSay("30, 45 and 60 s are printed as total; the time to flood is derived from flow and volumes"))
            .gravity(Gravity.ADVICE)
            .limit("half the time to flood after a normal stop at least 30 s, or the maker's total cranking time")
            .applies(ExhaustConditions.mufflerFitted())
            .needs(FloodTime.inputs())
            .needsWhen(s -> MufflerFilling.anyDrainsBack(s.subject()), MufflerFilling.inputsOfWhatDrainsBack())
            .uses(MUFFLER__RESIDUE_FRACTION, MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME)
            .holds(s -> Comparison.atLeast("cranking floods the muffler in " + Figures.both(FloodTime.of(s.record())) + ", of which half may be used",
                toUse(s), limit(s)))
            .remedy("Write the time on the starting card, shut the seacock when it is used up, and drain the muffler before the next try",
                ExhaustCrankingBudget::enlarge)
            .build();
    }

    private static TimeSpan toUse(Situation<ExhaustRun> s) {
        return CrankingFlood.toUse(FloodTime.of(s.record()));
    }

    private static Limit<TimeSpan> limit(Situation<ExhaustRun> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMaximumTotalCrankTime), CrankingFlood.LONGEST_TOTAL, "common practice");
    }

    private static Optional<Remedy> enlarge(Situation<ExhaustRun> s) {
        DrainBack filling = MufflerFilling.of(s.subject());
        double freeM3 = CrankingFlood.leastFree(limit(s).value(), FloodTime.flow(s.record())).si();
        Volume enough = Rounding.up(Volume.of((freeM3 + filling.draining().si()) / (1 - filling.residueShare().si())), 0.1, "L");
        return Optional.of(Remedy.of("Write " + Figures.both(Rounding.down(toUse(s), 1, "s"))
            + " on the starting card, shut the seacock when they are used up and drain the muffler before the next try; a muffler of "
            + Figures.both(enough) + " below its inlet would give " + Figures.both(limit(s).value()))
            .setting(s.subject().getMuffler(), MUFFLER__VOLUME_TO_INLET, enough));
    }
}
