// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.util.Arrays;

import garboard.trial.log.LogTally;
import garboard.trial.log.Mishap;

/**
 * Puts fast packets together: frame 0 tells the length and brings 6 bytes, each further one 7. One message is under way for each bus,
 * sender, destination, group and sequence counter.
 *
 * <p>A bus keeps the frames of one sender in order, so a frame that is out of order means that one was lost, and the message is dropped:
 * joined by number alone, the rest of one message and the beginning of the next, which may reuse the counter, would become a message that
 * nobody sent. The same goes for a pause above {@link #LONGEST_PAUSE_NS}.
 */
final class FastPackets {

    static final int LONGEST = 6 + 31 * 7;
    /** Open decoders take 750 ms from the standard (QUOTED). Measured in the log's time, which may step back; that proves nothing. */
    static final long LONGEST_PAUSE_NS = 750_000_000;

    /** Far more than a bus of 252 devices has under way at once. */
    private static final int MOST = 4096;

    private static final int WITHOUT_PRIORITY = 0x3FFFFFF;

    private final Message[] table = new Message[2 * MOST];
    private final LogTally tally;
    private int known;

    FastPackets(LogTally tally) {
        this.tally = tally;
    }

    /** A message under way. */
    static final class Message {

        final byte[] payload = new byte[LONGEST + 7 + Bits.ROOM];
        /** Time and line of its first frame. */
        long timeNs;
        long line;
        int length;
        private final long key;
        private long lastNs;
        /** The number of the frame that must come next; {@link #IDLE} when none is under way, {@link #DROPPED} when the rest is to be passed over. */
        private int next = IDLE;
        private int passedOver;

        private static final int IDLE = -1;
        private static final int DROPPED = -2;

        private Message(long key) {
            this.key = key;
        }
    }

    /** {@return the message that this frame completes, null for none} Its payload is good until the next call. */
    Message add(CanFrame frame, long line) {
        int head = frame.byteAt(0);
        Message message = find((long) frame.bus << 32 | (long) (frame.id & WITHOUT_PRIORITY) << 3 | head >> 5);
        int number = head & 0x1F;
        if (frame.length < 2) {
            cut(message, number, line);
            return null;
        }
        return number == 0 ? begin(message, frame, line) : goOn(message, frame, number, line);
    }

    private Message begin(Message message, CanFrame frame, long line) {
        if (message.next > 0) {
            tally.countAt(Mishap.CUT_MESSAGE, message.line);
        }
        message.timeNs = frame.timeNs;
        message.lastNs = frame.timeNs;
        message.line = line;
        message.length = frame.byteAt(1);
        if (message.length > LONGEST) {
            message.next = Message.DROPPED;
            message.passedOver = 0;
            tally.countAt(Mishap.CUT_MESSAGE, line);
            return null;
        }
        for (int i = 0; i < 6; i++) {
            message.payload[i] = (byte) (frame.data >>> 8 * (i + 2));
        }
        return put(message, 6, frame.length - 2, 1);
    }

    private Message goOn(Message message, CanFrame frame, int number, long line) {
        boolean late = frame.timeNs - message.lastNs > LONGEST_PAUSE_NS;
        if (message.next != number || late) {
            cut(message, number, line);
            return null;
        }
        message.lastNs = frame.timeNs;
        int at = 6 + 7 * (number - 1);
        for (int i = 0; i < 7; i++) {
            message.payload[at + i] = (byte) (frame.data >>> 8 * (i + 1));
        }
        return put(message, at + 7, at + frame.length - 1, number + 1);
    }

    /**
     * Takes note of so many bytes there, of so many when the frame is full. The last frame may end where the payload does; it may also end
     * earlier, and then the payload does.
     */
    private Message put(Message message, int full, int there, int next) {
        if (full >= message.length) {
            message.length = Math.min(message.length, there);
            message.next = Message.IDLE;
            return message;
        }
        if (there < full) {
            message.next = Message.DROPPED;
            message.passedOver = next - 1;
            tally.countAt(Mishap.CUT_MESSAGE, message.line);
            return null;
        }
        message.next = next;
        return null;
    }

    /** One message is lost, however many of its frames still come. */
    private void cut(Message message, int number, long line) {
        boolean sameAsBefore = message.next == Message.DROPPED && number > message.passedOver;
        if (!sameAsBefore) {
            tally.countAt(Mishap.CUT_MESSAGE, message.next > 0 ? message.line : line);
        }
        message.next = Message.DROPPED;
        message.passedOver = number;
    }

    /** Counts what is still under way when the log ends. */
    void finish() {
        for (Message message : table) {
            if (message != null && message.next > 0) {
                tally.countAt(Mishap.CUT_MESSAGE, message.line);
            }
        }
    }

    private Message find(long key) {
        int at = (int) (key * 0x9E3779B97F4A7C15L >>> 51) & table.length - 1;
        while (table[at] != null) {
            if (table[at].key == key) {
                return table[at];
            }
            at = at + 1 & table.length - 1;
        }
        if (known == MOST) { // only a garbled log comes here
            finish();
            Arrays.fill(table, null);
            known = 0;
        }
        known++;
        Message message = new Message(key);
        table[at] = message;
        return message;
    }
}
