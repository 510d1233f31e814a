// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;

/**
 * What a log does not tell and a person may.
 *
 * @param start when the log began, for those that count from 0, tell only the time of day, or tell none at first
 * @param zone  where local times are from
 */
public record LogOptions(Optional<Instant> start, ZoneId zone) {

    /** Nothing told: times without a day stay relative, local times are taken for universal time. */
    public static final LogOptions NONE = new LogOptions(Optional.empty(), ZoneOffset.UTC);

    public LogOptions {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(zone, "zone");
    }

    /** The same with a time of the start. */
    public LogOptions startingAt(Instant when) {
        return new LogOptions(Optional.of(when), zone);
    }

    /** The same with a zone, or an offset. */
    public LogOptions in(ZoneId where) {
        return new LogOptions(start, where);
    }
}
