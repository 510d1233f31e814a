// SPDX-License-Identifier: EPL-2.0
package garboard.trial.signalk;

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
import garboard.trial.nmea0183.Sentences;
import garboard.trial.nmea2000.MessageLines;

/**
 * Reads logs of Signal K: a delta a line, or the raw log of a server, {@code milliseconds;label;payload}, whose payload is a delta, an NMEA
 * 0183 sentence or an NMEA 2000 message. What a converter has made of the messages of a bus is second-hand: a log of the bus itself is the
 * better evidence.
 */
public final class DeltaLogReader implements LogReader {

    private static final long NS_PER_MS = 1_000_000L;

    private final LogOptions options;

    public DeltaLogReader(LogOptions options) {
        this.options = options;
    }

    @Override
    public void read(InputStream in, LogIntake intake, LogProgress progress) throws IOException {
        LogTally tally = intake.tally();
        Payloads payloads = new Payloads(intake, options);
        LogLines lines = new LogLines(in, progress);
        TextCursor cursor = new TextCursor();
        while (lines.next()) {
            tally.line(lines.number());
            cursor.set(lines.buffer(), lines.start(), lines.end());
            cursor.takeBlanks();
            if (lines.isCut()) {
                tally.count(Mishap.OVERLONG_LINE);
            } else if (cursor.peek() == '{') {
                payloads.deltas.take(lines.text(), OptionalLong.empty());
            } else if (!cursor.isAtEnd()) {
                server(lines, cursor, payloads, tally);
            }
        }
        payloads.messages.finish();
    }

    /** What can stand in a line. */
    private static final class Payloads {

        final Deltas deltas;
        final Sentences sentences;
        final MessageLines messages;

        Payloads(LogIntake intake, LogOptions options) {
            deltas = new Deltas(intake, options);
            sentences = new Sentences(intake, options);
            messages = new MessageLines(intake, new LogStamps(options, intake.tally()));
        }
    }

    private static void server(LogLines lines, TextCursor cursor, Payloads payloads, LogTally tally) {
        long milliseconds = cursor.takeDigits();
        if (milliseconds < 0 || milliseconds > Long.MAX_VALUE / NS_PER_MS || !cursor.take(';')) {
            tally.count(Mishap.UNREADABLE_LINE);
            return;
        }
        while (!cursor.isAtEnd() && cursor.peek() != ';') {
            cursor.goTo(cursor.at() + 1);
        }
        cursor.take(';');
        OptionalLong time = OptionalLong.of(milliseconds * NS_PER_MS);
        switch (cursor.peek()) {
            case '{' -> payloads.deltas.take(lines.textFrom(cursor.at()), time);
            case '$', '!', '\\' -> payloads.sentences.take(lines.textFrom(cursor.at()), time);
            case '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> payloads.messages.take(cursor);
            default -> tally.count(Mishap.UNREADABLE_LINE);
        }
    }
}
