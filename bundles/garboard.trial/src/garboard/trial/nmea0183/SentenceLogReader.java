// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea0183;

import java.io.IOException;
import java.io.InputStream;
import java.util.OptionalLong;

import garboard.trial.log.LogIntake;
import garboard.trial.log.LogLines;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogProgress;
import garboard.trial.log.LogReader;
import garboard.trial.log.LogStamps;
import garboard.trial.log.LogTally;
import garboard.trial.log.Mishap;
import garboard.trial.log.TextCursor;

/**
 * Reads logs of NMEA 0183 sentences, one a line. The time of a reading is that of the logger where it puts one before the sentence (a date
 * and time, or seconds or milliseconds since 1970), else that of a TAG block, else that of the last ZDA or RMC sentence. Lines that hold no
 * sentence are unreadable, but for empty ones and remarks behind {@code #}.
 */
public final class SentenceLogReader implements LogReader {

    private static final long NS_PER_MS = 1_000_000L;
    /** Seconds since 1970 stay below this for a thousand years; milliseconds have been above since April 1970. */
    private static final long MOST_SECONDS = 10_000_000_000L;

    private final LogOptions options;

    public SentenceLogReader(LogOptions options) {
        this.options = options;
    }

    @Override
    public void read(InputStream in, LogIntake intake, LogProgress progress) throws IOException {
        LogTally tally = intake.tally();
        LogStamps stamps = new LogStamps(options, tally);
        Sentences sentences = new Sentences(intake, options);
        LogLines lines = new LogLines(in, progress);
        TextCursor cursor = new TextCursor();
        while (lines.next()) {
            tally.line(lines.number());
            cursor.set(lines.buffer(), lines.start(), lines.end());
            if (lines.isCut()) {
                tally.count(Mishap.OVERLONG_LINE);
            } else if (!lines.isBlank() && cursor.peek() != '#') {
                take(lines, cursor, stamps, sentences, tally);
            }
        }
    }

    private static void take(LogLines lines, TextCursor cursor, LogStamps stamps, Sentences sentences, LogTally tally) {
        OptionalLong time = OptionalLong.empty();
        if (cursor.peek() >= '0' && cursor.peek() <= '9') {
            LogStamps.Result result = stamp(cursor, stamps);
            if (result != LogStamps.Result.OK) {
                tally.count(result == LogStamps.Result.AMBIGUOUS ? Mishap.AMBIGUOUS_TIME : Mishap.UNREADABLE_TIME);
                return;
            }
            time = OptionalLong.of(stamps.ns());
            while (cursor.takeBlanks() || cursor.take(',') || cursor.take(';')) {
                continue;
            }
        }
        sentences.take(lines.textFrom(cursor.at()), time);
    }

    private static LogStamps.Result stamp(TextCursor c, LogStamps stamps) {
        int from = c.at();
        long number = c.takeDigits();
        if (c.peek() == '-') {
            c.goTo(from);
            return stamps.dateAndTime(c);
        }
        if (number >= MOST_SECONDS) {
            return number < Long.MAX_VALUE / NS_PER_MS ? stamps.epoch(number / 1000, number % 1000 * NS_PER_MS) : LogStamps.Result.UNREADABLE;
        }
        long fraction = c.takeNanoseconds();
        return fraction < 0 ? LogStamps.Result.UNREADABLE : stamps.epoch(number, fraction);
    }
}
