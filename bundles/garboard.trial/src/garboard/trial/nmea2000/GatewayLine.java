// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import garboard.trial.log.LogStamps;
import garboard.trial.log.TextCursor;

/** The raw form of gateways: {@code 07:00:00.002 R 09F20023 00 41 30 D4 03 7F FF FF}, time of day, R received or T sent. */
final class GatewayLine implements FrameLine {

    private static final int IDENTIFIER_DIGITS = 8;
    private static final int IDENTIFIER = 0x1FFFFFFF;

    private final TextCursor cursor = new TextCursor();
    private final int bus;
    private final LogStamps stamps;

    GatewayLine(CanBuses buses, LogStamps stamps) {
        this.stamps = stamps;
        bus = buses.number(new byte[0], 0, 0); // the form tells no interface
    }

    @Override
    public Kind parse(byte[] bytes, int from, int to, CanFrame frame) {
        TextCursor c = cursor;
        c.set(bytes, from, to);
        c.takeBlanks();
        if (c.peek() < '0' || c.peek() > '9') {
            return Kind.REMARK;
        }
        if (stamps.timeOfDay(c) != LogStamps.Result.OK) {
            return Kind.BAD_TIME;
        }
        c.takeBlanks();
        if (!c.take('R') && !c.take('T')) {
            return Kind.UNREADABLE;
        }
        c.takeBlanks();
        int idFrom = c.at();
        int id = 0;
        for (int digit = c.takeHexDigit(); digit >= 0; digit = c.takeHexDigit()) {
            id = id << 4 | digit;
        }
        if (c.at() - idFrom != IDENTIFIER_DIGITS) {
            return Kind.UNREADABLE;
        }
        return data(c, frame, id);
    }

    private Kind data(TextCursor c, CanFrame frame, int id) {
        frame.id = id & IDENTIFIER;
        frame.bus = bus;
        frame.timeNs = stamps.ns();
        frame.data = 0;
        frame.length = 0;
        while (c.takeBlanks() && !c.isAtEnd()) {
            int value = c.takeHexByte();
            if (value < 0 || frame.length == CanFrame.MOST_BYTES) {
                return Kind.UNREADABLE;
            }
            frame.data |= (long) value << 8 * frame.length++;
        }
        return c.isAtEnd() ? Kind.FRAME : Kind.UNREADABLE;
    }
}
