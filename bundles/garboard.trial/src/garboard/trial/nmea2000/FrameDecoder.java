// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.util.Arrays;

import garboard.trial.log.LogIntake;
import garboard.trial.log.LogTally;
import garboard.trial.log.Mishap;

/** Turns the frames of a bus, or messages already put together, into readings. */
final class FrameDecoder {

    private static final int TRANSPORT_ANNOUNCEMENT = 60416;
    private static final int TRANSPORT_DATA = 60160;
    /** Parameter groups that are read, spread so that each is found at its first place or a neighbour. */
    private static final int TABLE = 512;
    /** Numbers with both data pages. */
    private static final int ALL_GROUPS = 0x3FFFF;
    private static final int EXTENDED_PAGE = 0x20000;

    private final LogTally tally;
    private final FastPackets packets;
    private final MessageDecoder decoder;
    private int[] foreign = new int[0];
    private final int[] groups = new int[TABLE];
    private final MessageDecoder.Plan[] plans = new MessageDecoder.Plan[TABLE];

    FrameDecoder(CanBuses buses, LogIntake intake) {
        Layouts layouts = Layouts.shared();
        tally = intake.tally();
        packets = new FastPackets(tally);
        decoder = new MessageDecoder(layouts, buses, intake);
        Arrays.fill(groups, -1);
        for (MessageLayout layout : layouts.all()) {
            int at = slot(layout.pgn());
            groups[at] = layout.pgn();
            plans[at] = new MessageDecoder.Plan(layout);
        }
    }

    /** A frame with a 29-bit identifier, in a line. */
    void frame(CanFrame frame, long line) {
        tally.frame();
        int pgn = frame.pgn();
        MessageDecoder.Plan plan = plan(pgn);
        if (plan == null || frame.isOtherProtocol()) {
            foreign(frame.id >> 8 & EXTENDED_PAGE | pgn, pgn);
        } else if (plan.layout.fast()) {
            FastPackets.Message message = packets.add(frame, line);
            if (message != null) {
                decoder.decode(plan, message.timeNs, frame.bus, frame.source(), message.payload, message.length);
            }
        } else {
            frame.spread();
            decoder.decode(plan, frame.timeNs, frame.bus, frame.source(), frame.bytes, frame.length);
        }
    }

    /** A message that is whole; the payload has {@link Bits#ROOM} behind it. */
    void message(long timeNs, int bus, int source, int pgn, byte[] payload, int length) {
        MessageDecoder.Plan plan = plan(pgn);
        if (plan == null) {
            foreign(pgn, pgn);
        } else {
            decoder.decode(plan, timeNs, bus, source, payload, length);
        }
    }

    /** To be called when the log ends. */
    void finish() {
        packets.finish();
        for (MessageDecoder.Plan plan : plans) {
            if (plan != null && plan.decoded > 0) {
                tally.messages(Integer.toString(plan.layout.pgn()), plan.decoded);
            }
        }
        for (int pgn = 0; pgn < foreign.length; pgn++) {
            if (foreign[pgn] > 0) {
                tally.foreignKind(Integer.toString(pgn), foreign[pgn]);
            }
        }
    }

    /** Most of a bus is foreign to us, so it is counted by number and named at the end. */
    private void foreign(int wholeNumber, int pgn) {
        if (pgn == TRANSPORT_ANNOUNCEMENT || pgn == TRANSPORT_DATA) {
            tally.count(Mishap.TRANSPORT_PACKET);
        } else {
            tally.count(Mishap.FOREIGN_MESSAGE);
            if (foreign.length == 0) {
                foreign = new int[ALL_GROUPS + 1];
            }
            foreign[wholeNumber & ALL_GROUPS]++;
        }
    }

    private MessageDecoder.Plan plan(int pgn) {
        return plans[slot(pgn)];
    }

    private int slot(int pgn) {
        int at = pgn * 0x9E3779B1 >>> 23;
        while (groups[at] != pgn && groups[at] >= 0) {
            at = at + 1 & TABLE - 1;
        }
        return at;
    }
}
