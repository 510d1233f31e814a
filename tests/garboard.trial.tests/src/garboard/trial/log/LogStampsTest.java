// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The instants are java.time's reading of the same moments. */
class LogStampsTest {

    private final LogTally tally = new LogTally();

    private static TextCursor at(String text) {
        TextCursor cursor = new TextCursor();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        cursor.set(bytes, 0, bytes.length);
        return cursor;
    }

    private static Instant instant(long ns) {
        return Instant.ofEpochSecond(Math.floorDiv(ns, 1_000_000_000L), Math.floorMod(ns, 1_000_000_000L));
    }

    @ParameterizedTest
    @CsvSource({"2026-03-05T10:30:15Z,2026-03-05T10:30:15Z", "2026-03-05 10:30:15.123456,2026-03-05T10:30:15.123456Z",
        "2026-03-05-10:30:15.5,2026-03-05T10:30:15.500Z",
        "2026-03-05T12:30+02:00,2026-03-05T10:30:00Z", "2026-03-05T05:30:15-0500,2026-03-05T10:30:15Z", "2026-03-05T11:30:15+01,2026-03-05T10:30:15Z",
        "2024-02-29T23:59:59.999999999Z,2024-02-29T23:59:59.999999999Z", "2026-03-05 10:30:15 PM,2026-03-05T22:30:15Z",
            "2026-03-05 12:00:01 AM,2026-03-05T00:00:01Z",
        "2016-12-31T23:59:60Z,2017-01-01T00:00:00Z"})
    void readsDatesAndTimes(String text, Instant expected) {
        LogStamps stamps = new LogStamps(LogOptions.NONE, tally);
        assertThat(stamps.dateAndTime(at(text))).isEqualTo(LogStamps.Result.OK);
        assertThat(instant(stamps.ns())).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2026", "2026-03", "2026-13-01T00:00Z", "2026-02-29T00:00Z", "2026-03-05", "2026-03-05T", "2026-03-05T24:00Z",
        "2026-03-05T10:60Z", "2026-03-05T10:30:61Z",
        "2026-03-05T10:30:15.Z", "1969-12-31T23:59Z", "9999-01-01T00:00Z", "2026/03-05T10:30Z", "2026-03-05T13:00 PM", "2026-03-05T10:30+25:00",
            "99999999999999999999-01-01T00:00Z"})
    void refusesWhatIsNoTime(String text) {
        assertThat(new LogStamps(LogOptions.NONE, tally).dateAndTime(at(text))).isEqualTo(LogStamps.Result.UNREADABLE);
    }

    @Test
    void takesFewSecondsForTimeSinceTheStart() {
        LogStamps stamps = new LogStamps(LogOptions.NONE, tally);
        assertThat(stamps.parenthesis(at("000.104210)"))).isEqualTo(LogStamps.Result.OK);
        assertThat(stamps.ns()).isEqualTo(104_210_000L);
        assertThat(tally.isTimeRelative()).isTrue();
        LogTally other = new LogTally();
        LogStamps started = new LogStamps(LogOptions.NONE.startingAt(Instant.parse("2026-03-05T10:00:00Z")), other);
        assertThat(started.parenthesis(at("000.104210)"))).isEqualTo(LogStamps.Result.OK);
        assertThat(instant(started.ns())).isEqualTo(Instant.parse("2026-03-05T10:00:00.104210Z"));
        assertThat(other.isTimeRelative()).isFalse();
    }

    @Test
    void goesOnAfterMidnightWhereOnlyTheTimeOfDayIsTold() {
        LogStamps stamps = new LogStamps(LogOptions.NONE.startingAt(Instant.parse("2026-03-05T22:00:00Z")), tally);
        stamps.timeOfDay(at("23:59:59.900"));
        assertThat(instant(stamps.ns())).isEqualTo(Instant.parse("2026-03-05T23:59:59.900Z"));
        stamps.timeOfDay(at("00:00:00.100"));
        assertThat(instant(stamps.ns())).isEqualTo(Instant.parse("2026-03-06T00:00:00.100Z"));
        // a small step back is one, not a new day
        stamps.timeOfDay(at("00:00:00.050"));
        assertThat(instant(stamps.ns())).isEqualTo(Instant.parse("2026-03-06T00:00:00.050Z"));
    }

    @Test
    void tellsALocalTimeThatExistsTwice() {
        LogStamps stamps = new LogStamps(LogOptions.NONE.in(ZoneId.of("America/New_York")), tally);
        // Clocks go back on the first Sunday of November at 2 h (15 U.S.C. 260a)
        assertThat(stamps.dateAndTime(at("2026-11-01 01:30:00"))).isEqualTo(LogStamps.Result.AMBIGUOUS);
        assertThat(stamps.dateAndTime(at("2026-11-01 02:30:00"))).isEqualTo(LogStamps.Result.OK);
        assertThat(instant(stamps.ns())).isEqualTo(Instant.parse("2026-11-01T07:30:00Z"));
    }

    @Test
    void refusesSecondsWhoseNanosecondsCannotBeCounted() {
        LogStamps stamps = new LogStamps(LogOptions.NONE, tally);
        assertThat(stamps.epoch(9_223_372_040L, 0)).isEqualTo(LogStamps.Result.UNREADABLE);
        assertThat(stamps.parenthesis(at("999999999999999999.0)"))).isEqualTo(LogStamps.Result.UNREADABLE);
        assertThat(stamps.parenthesis(at("1772706615.0"))).isEqualTo(LogStamps.Result.UNREADABLE);
    }
}
