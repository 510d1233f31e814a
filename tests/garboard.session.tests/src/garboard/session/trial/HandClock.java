// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/** A clock that a test moves by hand. */
final class HandClock extends Clock {

    private Instant now;
    private final ZoneId zone;

    private HandClock(Instant now, ZoneId zone) {
        this.now = now;
        this.zone = zone;
    }

    static HandClock at(String moment) {
        var start = OffsetDateTime.parse(moment);
        return new HandClock(start.toInstant(), start.getOffset());
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        return new HandClock(now, other);
    }
}
