// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.io.IOException;
import java.io.InputStream;
import java.util.function.BiFunction;

import garboard.trial.log.LogIntake;
import garboard.trial.log.LogLines;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogProgress;
import garboard.trial.log.LogReader;
import garboard.trial.log.LogStamps;
import garboard.trial.log.LogTally;
import garboard.trial.log.Mishap;

/** Reads logs of CAN frames, one a line, with NMEA 2000 and J1939 messages in them. Each interface is a bus of its own. */
public final class FrameLogReader implements LogReader {

    private final LogOptions options;
    private final BiFunction<CanBuses, LogStamps, FrameLine> form;

    private FrameLogReader(LogOptions options, BiFunction<CanBuses, LogStamps, FrameLine> form) {
        this.options = options;
        this.form = form;
    }

    /** {@return a reader of what SocketCAN's tools write to files or to the screen} */
    public static FrameLogReader candump(LogOptions options) {
        return new FrameLogReader(options, CandumpLine::new);
    }

    /** {@return a reader of the raw form of gateways, which tells the time of day only} */
    public static FrameLogReader gateway(LogOptions options) {
        return new FrameLogReader(options, GatewayLine::new);
    }

    @Override
    public void read(InputStream in, LogIntake intake, LogProgress progress) throws IOException {
        LogTally tally = intake.tally();
        CanBuses buses = new CanBuses();
        FrameLine line = form.apply(buses, new LogStamps(options, tally));
        FrameDecoder decoder = new FrameDecoder(buses, intake);
        CanFrame frame = new CanFrame();
        LogLines lines = new LogLines(in, progress);
        while (lines.next()) {
            tally.line(lines.number());
            if (lines.isCut()) {
                tally.count(Mishap.OVERLONG_LINE);
            } else {
                take(line.parse(lines.buffer(), lines.start(), lines.end(), frame), frame, decoder, tally, lines);
            }
        }
        decoder.finish();
    }

    private static void take(FrameLine.Kind kind, CanFrame frame, FrameDecoder decoder, LogTally tally, LogLines lines) {
        switch (kind) {
            case FRAME -> {
                tally.time(frame.timeNs);
                decoder.frame(frame, lines.number());
            }
            case FOREIGN -> {
                tally.frame();
                tally.count(Mishap.FOREIGN_FRAME);
            }
            case NO_TIME -> tally.count(Mishap.NO_TIME);
            case BAD_TIME -> tally.count(Mishap.UNREADABLE_TIME);
            case AMBIGUOUS_TIME -> tally.count(Mishap.AMBIGUOUS_TIME);
            case UNREADABLE -> {
                if (!lines.isBlank()) {
                    tally.count(Mishap.UNREADABLE_LINE);
                }
            }
            case REMARK -> { }
        }
    }
}
