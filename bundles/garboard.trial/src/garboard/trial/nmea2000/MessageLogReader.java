// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.io.IOException;
import java.io.InputStream;

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
 * Reads logs of messages that were put together already, one a line: time, priority, group, source, destination, length, bytes:
 * {@code 2026-09-22T07:00:00.002Z,2,127488,35,255,8,00,41,30,d4,03,7f,ff,ff}. Other lines are remarks.
 */
public final class MessageLogReader implements LogReader {

    private final LogOptions options;

    public MessageLogReader(LogOptions options) {
        this.options = options;
    }

    @Override
    public void read(InputStream in, LogIntake intake, LogProgress progress) throws IOException {
        LogTally tally = intake.tally();
        MessageLines messages = new MessageLines(intake, new LogStamps(options, tally));
        LogLines lines = new LogLines(in, progress);
        TextCursor cursor = new TextCursor();
        while (lines.next()) {
            tally.line(lines.number());
            cursor.set(lines.buffer(), lines.start(), lines.end());
            if (lines.isCut()) {
                tally.count(Mishap.OVERLONG_LINE);
            } else if (cursor.peek() >= '0' && cursor.peek() <= '9') {
                messages.take(cursor);
            }
        }
        messages.finish();
    }
}
