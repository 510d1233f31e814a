// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import garboard.trial.log.LogIntake;
import garboard.trial.log.LogStamps;
import garboard.trial.log.LogTally;
import garboard.trial.log.Mishap;
import garboard.trial.log.TextCursor;

/** Takes messages that stand whole in a line, see {@link MessageLogReader}; also such as are part of a log of another form. */
public final class MessageLines {

    /** The longest message that J1939 can carry in packets. */
    private static final int LONGEST = 1785;
    private static final int LAST_GROUP = 0x3FFFF;

    private final LogTally tally;
    private final LogStamps stamps;
    private final FrameDecoder decoder;
    private final int bus;
    private final byte[] payload = new byte[LONGEST + Bits.ROOM];

    /** Takes the messages of one log. */
    public MessageLines(LogIntake intake, LogStamps stamps) {
        tally = intake.tally();
        this.stamps = stamps;
        CanBuses buses = new CanBuses();
        bus = buses.number(payload, 0, 0); // the form tells no interface
        decoder = new FrameDecoder(buses, intake);
    }

    /** Takes one line from its time on. */
    public void take(TextCursor c) {
        switch (stamps.dateAndTime(c)) {
            case UNREADABLE -> tally.count(Mishap.UNREADABLE_TIME);
            case AMBIGUOUS -> tally.count(Mishap.AMBIGUOUS_TIME);
            case OK -> message(c);
        }
    }

    private void message(TextCursor c) {
        long priority = number(c);
        long pgn = number(c);
        long source = number(c);
        long destination = number(c);
        long length = number(c);
        if (priority < 0 || pgn < 0 || pgn > LAST_GROUP || source < 0 || source > 255 || destination < 0 || length < 0 || length > LONGEST) {
            tally.count(Mishap.UNREADABLE_LINE);
            return;
        }
        for (int i = 0; i < length; i++) {
            int value = c.take(',') ? c.takeHexByte() : -1;
            if (value < 0) {
                tally.count(Mishap.CUT_MESSAGE);
                return;
            }
            payload[i] = (byte) value;
        }
        tally.time(stamps.ns());
        decoder.message(stamps.ns(), bus, (int) source, (int) pgn, payload, (int) length);
    }

    private static long number(TextCursor c) {
        return c.take(',') ? c.takeDigits() : -1;
    }

    /** To be called when the log ends. */
    public void finish() {
        decoder.finish();
    }
}
