// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.util.Optional;

import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.LogIntake;
import garboard.trial.log.Measurand;

/** Finds the numbers of the channels that the fields of a message fill: one group for each sender, message, instance, code and line. */
final class ChannelGroups {

    /** The instance or code of a message that does not tell any. */
    static final int UNTOLD = 0xFFF;

    private final Layouts layouts;
    private final CanBuses buses;
    private final LogIntake intake;
    private long[] keys = new long[512];
    private int[][] groups = new int[512][];
    private int size;

    ChannelGroups(Layouts layouts, CanBuses buses, LogIntake intake) {
        this.layouts = layouts;
        this.buses = buses;
        this.intake = intake;
    }

    /**
     * {@return the channel numbers of the reading fields of a layout, in their order}
     *
     * @param line 0 to 2, 3 where it is not told
     */
    int[] find(MessageLayout layout, FieldLayout[] readings, int bus, int source, int instance, int code, int line) {
        long key = (long) bus << 52 | (long) source << 44 | (long) layout.pgn() << 26 | (long) instance << 14 | (long) code << 2 | line;
        int at = slot(key);
        if (groups[at] == null) {
            if (2 * size >= keys.length) {
                grow();
                at = slot(key);
            }
            int[] opened = open(layout, readings, bus, source, instance, code, line);
            if (!isOpen(opened)) {
                return opened; // not kept: a garbled log could bring any number of them
            }
            keys[at] = key;
            groups[at] = opened;
            size++;
        }
        return groups[at];
    }

    private static boolean isOpen(int[] group) {
        return group.length == 0 || group[group.length - 1] != LogIntake.NO_CHANNEL;
    }

    private int[] open(MessageLayout layout, FieldLayout[] readings, int bus, int source, int instance, int code, int line) {
        Layouts.CodeMeaning meaning = code == UNTOLD ? new Layouts.CodeMeaning("", Optional.empty()) : layouts.code(layout.pgn(), code);
        Channel.Origin origin = new Channel.Origin(buses.name(bus), Integer.toString(source), Integer.toString(layout.pgn()));
        int[] numbers = new int[readings.length];
        for (int i = 0; i < readings.length; i++) {
            FieldLayout.Meaning what = readings[i].meaning();
            Measurand measurand = meaning.measurand().orElse(what.measurand().orElseThrow());
            AcLine acLine = layout.key(MessageLayout.Key.LINE).isPresent() ? line(line) : what.line();
            String detail = what.detail().isEmpty() ? meaning.detail() : what.detail();
            numbers[i] = intake.channel(new Channel(measurand, acLine, instance == UNTOLD ? "" : Integer.toString(instance), detail, origin));
        }
        return numbers;
    }

    private static AcLine line(int line) {
        return switch (line) {
            case 0 -> AcLine.L1;
            case 1 -> AcLine.L2;
            case 2 -> AcLine.L3;
            default -> AcLine.NONE;
        };
    }

    private int slot(long key) {
        int at = (int) (key * 0x9E3779B97F4A7C15L >>> 40) & keys.length - 1;
        while (groups[at] != null && keys[at] != key) {
            at = at + 1 & keys.length - 1;
        }
        return at;
    }

    private void grow() {
        long[] oldKeys = keys;
        int[][] oldGroups = groups;
        keys = new long[2 * oldKeys.length];
        groups = new int[2 * oldKeys.length][];
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldGroups[i] != null) {
                int at = slot(oldKeys[i]);
                keys[at] = oldKeys[i];
                groups[at] = oldGroups[i];
            }
        }
    }
}
