// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

import garboard.trial.log.LogOptions;
import garboard.trial.log.LogStamps;
import garboard.trial.log.LogTally;

/** A message as it comes out of the frames of a log, before it is taken apart. */
record Delivered(String bus, int pgn, String payload) {

    /** The messages that have a layout. */
    static List<Delivered> from(String log) {
        LogTally tally = new LogTally();
        CanBuses buses = new CanBuses();
        CandumpLine line = new CandumpLine(buses, new LogStamps(LogOptions.NONE, tally));
        FastPackets packets = new FastPackets(tally);
        CanFrame frame = new CanFrame();
        List<Delivered> delivered = new ArrayList<>();
        for (String text : log.lines().toList()) {
            byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
            if (line.parse(bytes, 0, bytes.length, frame) != FrameLine.Kind.FRAME) {
                continue;
            }
            // 127507 stands among the cases for fast packets, but is of no use in a trial and has no layout
            boolean fast = frame.pgn() == 127507 || Layouts.shared().of(frame.pgn()).map(MessageLayout::fast).orElse(false);
            if (fast) {
                FastPackets.Message message = packets.add(frame, 1);
                if (message != null) {
                    delivered.add(new Delivered(buses.name(frame.bus), frame.pgn(), hex(message.payload, message.length)));
                }
            } else if (Layouts.shared().of(frame.pgn()).isPresent()) {
                frame.spread();
                delivered.add(new Delivered(buses.name(frame.bus), frame.pgn(), hex(frame.bytes, frame.length)));
            }
        }
        return delivered;
    }

    private static String hex(byte[] payload, int length) {
        return HexFormat.of().withUpperCase().formatHex(payload, 0, length);
    }

    /** The values of the fields that have one, in the unit of their layout. */
    Map<String, Double> values() {
        byte[] bytes = HexFormat.of().parseHex(payload);
        byte[] roomy = Arrays.copyOf(bytes, bytes.length + Bits.ROOM);
        Map<String, Double> values = new HashMap<>();
        for (FieldLayout field : Layouts.shared().of(pgn).orElseThrow().fields()) {
            if (field.isWithin(bytes.length, 0) && field.state(field.raw(roomy, 0)) == Coding.State.VALUE) {
                values.put(field.name(), field.inUnit(field.raw(roomy, 0)));
            }
        }
        return values;
    }
}
