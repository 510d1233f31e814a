// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.Optional;
import java.util.function.Function;

import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.MakerLimits;
import garboard.physics.exhaust.CrankingFlood;
import garboard.quantity.TimeSpan;

/**
 * How long a set may be cranked.
 *
 * @param attempt longest single try
 * @param attemptByMaker whether that is the maker's figure; otherwise it is common practice
 * @param total longest cranking in one series, whatever the muffler holds
 * @param totalByMaker whether that is the maker's figure
 */
public record CrankingLimits(TimeSpan attempt, boolean attemptByMaker, TimeSpan total, boolean totalByMaker) {

    /** Longest single try where the maker gives none. Common practice: 5 to 10 s. */
    public static final TimeSpan USUAL_ATTEMPT = TimeSpan.valueOf("10 s");

    /** Least rest between two tries, for the starter to cool. Common practice: 15 s to 60 s are named. */
    public static final TimeSpan USUAL_REST = TimeSpan.valueOf("15 s");

    public static CrankingLimits of(CommissioningRecord record) {
        Optional<TimeSpan> attempt = maker(record, MakerLimits::getMaximumCrankTime);
        Optional<TimeSpan> total = maker(record, MakerLimits::getMaximumTotalCrankTime);
        return new CrankingLimits(attempt.orElse(USUAL_ATTEMPT), attempt.isPresent(), total.orElse(CrankingFlood.LONGEST_TOTAL),
            total.isPresent());
    }

    private static Optional<TimeSpan> maker(CommissioningRecord record, Function<MakerLimits, TimeSpan> limit) {
        return Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getMakerLimits).map(limit).filter(time -> time.si() > 0);
    }
}
