// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * What was found in a log, counted while it is read: lines, frames, messages, readings, and every {@link Mishap} with its first place.
 * Readers write into it; when reading is over it only answers.
 */
public final class LogTally {

    /** A real bus has some dozens; the rest of a garbled log is summed up. */
    private static final int MOST_KINDS = 500;
    private static final long LONGEST_GAP_NS = 3_600_000_000_000L;
    private static final String OTHERS = "others";

    private final long[] counts = new long[Mishap.values().length];
    private final long[] firstLines = new long[Mishap.values().length];
    private final Map<String, Long> messages = new TreeMap<>();
    private final Map<String, Long> foreign = new TreeMap<>();
    private long line;
    private long frames;
    private long readings;
    private boolean relative;
    private boolean timed;
    private long earliestNs = Long.MAX_VALUE;
    private long latestNs = Long.MIN_VALUE;
    private long previousNs;
    private long largestStepBackNs;
    private long clockAheadNs;
    private boolean clockTold;

    /** Says which line is being read, from 1; what is counted next is put down to it. */
    public void line(long number) {
        line = number;
    }

    /** Counts a mishap in the present line. */
    public void count(Mishap mishap) {
        countAt(mishap, line);
    }

    /** Counts a mishap that began in an earlier line. */
    public void countAt(Mishap mishap, long firstLine) {
        int kind = mishap.ordinal();
        if (counts[kind]++ == 0 || firstLine < firstLines[kind]) {
            firstLines[kind] = firstLine;
        }
    }

    /** Counts a frame of the bus. */
    public void frame() {
        frames++;
    }

    /** Counts messages that were decoded. */
    public void messages(String kind, long number) {
        add(messages, kind, number);
    }

    /** Counts a message of a kind that is not read. */
    public void foreign(String kind) {
        count(Mishap.FOREIGN_MESSAGE);
        foreignKind(kind, 1);
    }

    /** Names the kind of messages that were counted as foreign already. */
    public void foreignKind(String kind, long number) {
        add(foreign, kind, number);
    }

    private static void add(Map<String, Long> to, String kind, long number) {
        String name = Channel.cut(kind);
        to.merge(to.size() < MOST_KINDS || to.containsKey(name) ? name : OTHERS, number, Long::sum);
    }

    /** Takes note of the time stamp of the present line. */
    public void time(long ns) {
        if (timed && ns < previousNs) {
            count(Mishap.TIME_STEPS_BACK);
            largestStepBackNs = Math.max(largestStepBackNs, previousNs - ns);
        } else if (timed && ns - previousNs > LONGEST_GAP_NS) {
            count(Mishap.TIME_JUMPS_AHEAD);
        }
        timed = true;
        previousNs = ns;
        earliestNs = Math.min(earliestNs, ns);
        latestNs = Math.max(latestNs, ns);
    }

    /** Says that the stamps count from the start of the log and nobody told when that was. */
    public void timeIsRelative() {
        relative = true;
    }

    /** Takes note of how far the clock on the bus is ahead of the log's own stamps; the first one stays. */
    void clockAhead(long ns) {
        if (!clockTold) {
            clockAheadNs = ns;
            clockTold = true;
        }
    }

    void reading() {
        readings++;
    }

    /** {@return how many lines the file has} */
    public long lines() {
        return line;
    }

    /** {@return how many frames of a CAN bus were read, whatever their kind} */
    public long frames() {
        return frames;
    }

    /** {@return how many messages, sentences, deltas or rows were decoded} */
    public long messages() {
        return messages.values().stream().mapToLong(Long::longValue).sum();
    }

    /** {@return how many of each kind were decoded, such as {@code 127489} or {@code XDR}} */
    public Map<String, Long> messagesByKind() {
        return Map.copyOf(messages);
    }

    /** {@return how many of each kind were left out because that kind is not read} */
    public Map<String, Long> foreignByKind() {
        return Map.copyOf(foreign);
    }

    /** {@return how many readings were passed on} */
    public long readings() {
        return readings;
    }

    /** {@return how often this happened} */
    public long of(Mishap mishap) {
        return counts[mishap.ordinal()];
    }

    /** {@return the line in which this happened first, 0 where it never did} */
    public long firstLine(Mishap mishap) {
        return firstLines[mishap.ordinal()];
    }

    /** {@return the first time stamp in ns since 1970} Nothing where no line has one. */
    public OptionalLong earliestNs() {
        return timed ? OptionalLong.of(earliestNs) : OptionalLong.empty();
    }

    /** {@return the last time stamp in ns since 1970} */
    public OptionalLong latestNs() {
        return timed ? OptionalLong.of(latestNs) : OptionalLong.empty();
    }

    /** {@return whether times count from the start of the log, because it does not tell the day and nobody else did} */
    public boolean isTimeRelative() {
        return relative;
    }

    /** {@return by how much the stamps step back at most, in ns; 0 where they never do} */
    public long largestStepBackNs() {
        return largestStepBackNs;
    }

    /**
     * {@return how far the clock of the bus is ahead of the logger's, in ns, where the bus tells the time} For a log of
     * {@linkplain #isTimeRelative() relative time} this is when it began.
     */
    public OptionalLong clockAheadNs() {
        return clockTold ? OptionalLong.of(clockAheadNs) : OptionalLong.empty();
    }

    /** {@return one sentence for each mishap that happened, in a fixed order} */
    public List<String> sentences() {
        List<String> told = new ArrayList<>();
        for (Mishap mishap : Mishap.values()) {
            if (counts[mishap.ordinal()] > 0) {
                told.add(mishap.sentence(counts[mishap.ordinal()], firstLines[mishap.ordinal()]));
            }
        }
        return told;
    }

    /** {@return the counts of all that happened} */
    public Map<Mishap, Long> mishaps() {
        Map<Mishap, Long> happened = new EnumMap<>(Mishap.class);
        for (Mishap mishap : Mishap.values()) {
            if (counts[mishap.ordinal()] > 0) {
                happened.put(mishap, counts[mishap.ordinal()]);
            }
        }
        return happened;
    }
}
