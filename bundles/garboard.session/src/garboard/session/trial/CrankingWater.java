// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.List;
import java.util.Optional;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.CrankingAttempt;
import garboard.model.SeacockState;
import garboard.model.Trial;
import garboard.physics.exhaust.CrankingFlood;
import garboard.quantity.Ratio;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;

/**
 * How much water the starter can have pumped into the muffler since it was last emptied, and how long one may go on. Tries count while the seacock
 * is open, or may have been; they begin anew once the engine has fired, which blows the muffler out, or the muffler was drained.
 *
 * @param room the muffler and the flow into it
 * @param limits how long one may crank in any case
 * @param cranked time cranked in this series with the seacock open
 * @param tries how many tries the series has
 * @param untimed how many tries of the series have no time and are not counted
 * @param untold how many tries of the series do not say whether the seacock was open; they are counted as open
 */
public record CrankingWater(MufflerRoom room, CrankingLimits limits, TimeSpan cranked, int tries, int untimed, int untold) {

    /** How near the water is. */
    public enum Level {
        /** There is time for another full try. */
        CALM,
        /** The next try has to be a short one. */
        NEAR,
        /** No more with the seacock open: shut it and drain the muffler. */
        SHUT,
        /** The muffler can be full, and water on its way into the engine. */
        FULL
    }

    public static CrankingWater of(CommissioningRecord record) {
        return of(record, Optional.empty());
    }

    /** {@return the same with a try that is going on: its time so far stands for the duration that it does not have yet} */
    public static CrankingWater of(CommissioningRecord record, Optional<AttemptWatch.Running> running) {
        double crankedS = 0;
        int tries = 0;
        int untimed = 0;
        int untold = 0;
        List<CrankingAttempt> attempts = Optional.ofNullable(record.getTrial()).<List<CrankingAttempt>>map(Trial::getAttempts).orElse(List.of());
        for (CrankingAttempt attempt : attempts) {
            Optional<TimeSpan> lasted = running.filter(now -> now.attempt() == attempt).map(AttemptWatch.Running::sofar)
                .or(() -> Optional.ofNullable(attempt.getDuration()));
            if (attempt.getSeacock() != SeacockState.SHUT) {
                crankedS += lasted.map(TimeSpan::si).orElse(0.0);
                tries++;
                untimed += lasted.isPresent() ? 0 : 1;
                untold += attempt.getSeacock() == SeacockState.NOT_ENTERED ? 1 : 0;
            }
            if (attempt.getFired() == Answer.YES || attempt.getMufflerDrained() == Answer.YES) {
                crankedS = 0;
                tries = 0;
                untimed = 0;
                untold = 0;
            }
        }
        return new CrankingWater(MufflerRoom.of(record), CrankingLimits.of(record), TimeSpan.of(crankedS), tries, untimed, untold);
    }

    /** {@return the water that the series can have brought} */
    public Optional<Volume> collected() {
        return room.flow().map(flow -> Volume.of(flow.si() * cranked.si()));
    }

    /** {@return how full the muffler can be; more than 1 is beyond its inlet} */
    public Optional<Ratio> filling() {
        return collected().flatMap(water -> room.standing().flatMap(standing -> room.usable()
            .map(usable -> Ratio.of((standing.si() + water.si()) / usable.si()))));
    }

    /** {@return cranking until the muffler is full, from empty of cranked water} */
    public Optional<TimeSpan> timeToFlood() {
        return room.flow().filter(flow -> flow.si() > 0).flatMap(flow -> room.free().map(free -> CrankingFlood.timeToFlood(free, flow)));
    }

    /** {@return cranking after which the seacock is to be shut: half the time to flood, and no more than the limit on the total} */
    public TimeSpan allowed() {
        double totalS = limits.total().si();
        return TimeSpan.of(timeToFlood().map(flooded -> Math.min(totalS, CrankingFlood.toUse(flooded).si())).orElse(totalS));
    }

    /** {@return whether {@link #allowed} is set by the muffler, not by the limit on the total} */
    public boolean muffler() {
        return timeToFlood().filter(flooded -> CrankingFlood.toUse(flooded).isLessThan(limits.total())).isPresent();
    }

    /** {@return cranking left before the seacock is to be shut, not less than none} */
    public TimeSpan left() {
        return TimeSpan.of(Math.max(0, allowed().si() - cranked.si()));
    }

    public Level level() {
        if (timeToFlood().filter(flooded -> !cranked.isLessThan(flooded)).isPresent()) {
            return Level.FULL;
        }
        if (!cranked.isLessThan(allowed())) {
            return Level.SHUT;
        }
        return left().isLessThan(limits.attempt()) ? Level.NEAR : Level.CALM;
    }
}
