// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CRANKING_ATTEMPT__DURATION;
import static garboard.model.GarboardPackage.Literals.CRANKING_ATTEMPT__FIRED;
import static garboard.model.GarboardPackage.Literals.CRANKING_ATTEMPT__MUFFLER_DRAINED;
import static garboard.model.GarboardPackage.Literals.CRANKING_ATTEMPT__SEACOCK;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME;
import static garboard.model.GarboardPackage.Literals.MUFFLER__RESIDUE_FRACTION;
import static garboard.model.GarboardPackage.Literals.TRIAL__ATTEMPTS;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Answer;
import garboard.model.CrankingAttempt;
import garboard.model.MakerLimits;
import garboard.model.SeacockState;
import garboard.model.Trial;
import garboard.physics.exhaust.CrankingFlood;
import garboard.practice.Figures;
import garboard.quantity.TimeSpan;

/**
 * At the trial nobody cranked so long with the seacock open that the muffler could have flooded the engine. Tries add up until the engine fires
 * or the muffler is drained; tries with the seacock shut pump nothing.
 */
final class ExhaustCrankingTotal {

    private ExhaustCrankingTotal() {
    }

    static Check<Trial> check() {
        return Check.check("EXHAUST-CRANKING-TOTAL", Trial.class)
            .title("Cranking at the trial stayed within what the muffler holds")
            .why("Once the muffler is full the pump drives water through the elbow into the cylinders; the next try bends the rods.")
            .basis(Basis.commonPractice().othersSay("30, 45 and 60 s are printed as total; the time to flood is derived from flow and volumes"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("in one series at most half the time to flood, and at most 30 s or the maker's total cranking time")
            .needs(path(TRIAL__ATTEMPTS, CRANKING_ATTEMPT__DURATION), path(TRIAL__ATTEMPTS, CRANKING_ATTEMPT__SEACOCK),
                path(TRIAL__ATTEMPTS, CRANKING_ATTEMPT__FIRED))
            .uses(path(TRIAL__ATTEMPTS, CRANKING_ATTEMPT__MUFFLER_DRAINED), path(MAKER_LIMITS__MAXIMUM_TOTAL_CRANK_TIME),
                path(MUFFLER__RESIDUE_FRACTION))
            .needs(FloodTime.inputs())
            .needsWhen(s -> MufflerFilling.anyDrainsBack(s.record().getExhaust()), MufflerFilling.inputsOfWhatDrainsBack())
            .holds(s -> Comparison.atMost("the longest series of tries with the seacock open lasted " + Figures.both(longestSeries(s.subject())),
                longestSeries(s.subject()), limit(s)))
            .remedy("Shut the seacock, drain the muffler, look for water in the engine, then find out why it does not fire",
                s -> Optional.of(Remedy.of("Before the next try drain the muffler and look for water in the engine; shut the seacock after "
                    + Figures.both(limit(s).value()) + " of cranking, and find out why it does not fire")))
            .build();
    }

    /** The maker's total takes the place of the customary 30 s; the time to flood is that of this muffler, which the maker does not know. */
    private static Limit<TimeSpan> limit(Situation<Trial> s) {
        Limit<TimeSpan> total = Limit.makerOr(s.maker(MakerLimits::getMaximumTotalCrankTime), CrankingFlood.LONGEST_TOTAL,
            "common practice: 30 s in all");
        TimeSpan toUse = CrankingFlood.toUse(FloodTime.of(s.record()));
        return toUse.isLessThan(total.value()) ? Limit.of(toUse, "half the time to flood this muffler") : total;
    }

    private static TimeSpan longestSeries(Trial trial) {
        double seriesS = 0;
        double longestS = 0;
        for (CrankingAttempt attempt : trial.getAttempts()) {
            if (attempt.getSeacock() == SeacockState.OPEN) {
                seriesS += attempt.getDuration().si();
                longestS = Math.max(longestS, seriesS);
            }
            if (attempt.getFired() == Answer.YES || attempt.getMufflerDrained() == Answer.YES) {
                seriesS = 0; // the muffler is empty again, blown out or drained
            }
        }
        return TimeSpan.of(longestS);
    }
}
