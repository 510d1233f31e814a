// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import garboard.trial.log.LogStamps;
import garboard.trial.log.TextCursor;

/**
 * The forms of SocketCAN: for logs {@code (1790060400.001950) can0 09F20023#004130D4037FFFFF}, for the screen
 * {@code (1790060400.001950)  can0  09F20023   [8]  00 41 30 D4 03 7F FF FF}, where the stamp may be missing or a local date. A line
 * without stamp that is no frame is a remark.
 */
final class CandumpLine implements FrameLine {

    /** Flag above the 29 bits of the identifier (Linux, {@code linux/can.h}). */
    private static final int ERROR_FLAG = 0x20000000;
    private static final int IDENTIFIER = 0x1FFFFFFF;
    private static final int LONG_IDENTIFIER_DIGITS = 8;
    private static final int SHORT_IDENTIFIER_DIGITS = 3;

    private final UsualCandumpLine usual = new UsualCandumpLine();
    private final TextCursor cursor = new TextCursor();
    private final CanBuses buses;
    private final LogStamps stamps;
    private int id;
    private int idDigits;

    CandumpLine(CanBuses buses, LogStamps stamps) {
        this.buses = buses;
        this.stamps = stamps;
    }

    @Override
    public Kind parse(byte[] bytes, int from, int to, CanFrame frame) {
        return usual.read(bytes, from, to, frame) ? Kind.FRAME : any(bytes, from, to, frame);
    }

    private Kind any(byte[] bytes, int from, int to, CanFrame frame) {
        TextCursor c = cursor;
        c.set(bytes, from, to);
        c.takeBlanks();
        boolean stamped = c.take('(');
        LogStamps.Result time = stamped ? stamps.parenthesis(c) : LogStamps.Result.OK;
        if (time == LogStamps.Result.UNREADABLE) {
            return Kind.BAD_TIME;
        }
        c.takeBlanks();
        int nameFrom = c.takeWord('#');
        int nameTo = c.at();
        Kind kind = nameTo > nameFrom && c.takeBlanks() ? rest(c, frame) : Kind.UNREADABLE;
        if (kind != Kind.FRAME) {
            return kind == Kind.UNREADABLE && !stamped ? Kind.REMARK : kind;
        }
        frame.bus = buses.number(bytes, nameFrom, nameTo);
        if (frame.bus < 0) {
            return Kind.UNREADABLE;
        }
        usual.learn(buses.bytes(frame.bus), frame.bus);
        frame.timeNs = stamps.ns();
        if (!stamped) {
            return Kind.NO_TIME;
        }
        return time == LogStamps.Result.OK ? Kind.FRAME : Kind.AMBIGUOUS_TIME;
    }

    /** From the identifier on. */
    private Kind rest(TextCursor c, CanFrame frame) {
        direction(c);
        takeIdentifier(c);
        if (c.take('#')) {
            return logData(c, frame);
        }
        return c.takeBlanks() && c.take('[') ? screenData(c, frame) : Kind.UNREADABLE;
    }

    /** On the screen, {@code RX} or {@code TX} and two flags may stand before the identifier. */
    private static void direction(TextCursor c) {
        if (c.peek() == 'R' || c.peek() == 'T') {
            for (int i = 0; i < 3; i++) {
                c.takeWord('#');
                c.takeBlanks();
            }
        }
    }

    private void takeIdentifier(TextCursor c) {
        int from = c.at();
        int number = 0;
        for (int digit = c.takeHexDigit(); digit >= 0; digit = c.takeHexDigit()) {
            number = number << 4 | digit;
        }
        id = number;
        idDigits = c.at() - from;
    }

    /** {@return FRAME for a data frame with a long identifier} */
    private Kind classified() {
        if (idDigits == SHORT_IDENTIFIER_DIGITS) {
            return Kind.FOREIGN;
        }
        if (idDigits != LONG_IDENTIFIER_DIGITS) {
            return Kind.UNREADABLE;
        }
        return (id & ERROR_FLAG) != 0 ? Kind.FOREIGN : Kind.FRAME;
    }

    private Kind logData(TextCursor c, CanFrame frame) {
        Kind kind = classified();
        if (kind == Kind.UNREADABLE || c.peek() == '#' || c.peek() == 'R') {
            return kind == Kind.UNREADABLE ? kind : Kind.FOREIGN; // CAN FD has ##, a remote request R
        }
        long data = 0;
        int length = 0;
        while (length <= CanFrame.MOST_BYTES) {
            int value = c.takeHexByte();
            if (value < 0) {
                break;
            }
            data |= length < CanFrame.MOST_BYTES ? (long) value << 8 * length : 0;
            length++;
            c.take('.');
        }
        if (c.peek() == ':') {
            return Kind.FOREIGN; // CAN XL
        }
        if (length > CanFrame.MOST_BYTES || !isTail(c)) {
            return Kind.UNREADABLE;
        }
        fill(frame, data, length);
        return kind;
    }

    /** What may follow the data: the true length of one above 8 as {@code _9} to {@code _F}, and {@code R} or {@code T}. */
    private static boolean isTail(TextCursor c) {
        if (c.take('_') && c.takeHexDigit() < 0) {
            return false;
        }
        if (c.takeBlanks()) {
            if (!c.take('R')) {
                c.take('T');
            }
            c.takeBlanks();
        }
        return c.isAtEnd();
    }

    private Kind screenData(TextCursor c, CanFrame frame) {
        c.takeBlanks();
        long length = c.takeDigits();
        if (!c.take(']') || length < 0) {
            return Kind.UNREADABLE;
        }
        Kind kind = classified();
        c.takeBlanks();
        if (kind != Kind.FRAME || length > CanFrame.MOST_BYTES || c.peek() == 'r') {
            return kind == Kind.UNREADABLE ? kind : Kind.FOREIGN; // "remote request"
        }
        long data = 0;
        for (int i = 0; i < length; i++) {
            int value = c.takeHexByte();
            if (value < 0 || !c.takeBlanks() && !c.isAtEnd()) {
                return Kind.UNREADABLE;
            }
            data |= (long) value << 8 * i;
        }
        fill(frame, data, (int) length);
        return kind;
    }

    private void fill(CanFrame frame, long data, int length) {
        frame.id = id & IDENTIFIER;
        frame.data = data;
        frame.length = length;
    }
}
