// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a reader of some format gives its findings to. Numbers the channels, refuses what cannot be true, counts, and passes the rest on
 * to the sink.
 */
public final class LogIntake {

    /** More than the largest yacht sends; a garbled log must not fill the memory. */
    public static final int MOST_CHANNELS = 2048;
    /** The number of a channel too many. */
    public static final int NO_CHANNEL = -1;

    private final ReadingSink sink;
    private final LogTally tally;
    private final Map<Channel, Integer> numbers = new HashMap<>();
    private final List<Channel> channels = new ArrayList<>();
    private double[] lowest = new double[64];
    private double[] highest = new double[64];
    private long[] read = new long[64];
    private long[] missing = new long[64];
    private boolean[] other = new boolean[64];

    /** An intake for one log. */
    public LogIntake(ReadingSink sink, LogTally tally) {
        this.sink = sink;
        this.tally = tally;
    }

    /**
     * What came of one channel.
     *
     * @param number   of the channel
     * @param channel  what it is
     * @param readings none where a device names it and never fills it
     * @param missing  how often there was no value
     * @param onlyZero whether all readings are 0
     */
    public record ChannelCount(int number, Channel channel, long readings, long missing, boolean onlyZero) {

        /** {@return whether it shows nothing but the 0 that senders write when they do not measure} */
        public boolean isPlaceholder() {
            return onlyZero && channel.measurand().isZeroAPlaceholder();
        }
    }

    /** {@return the number of a channel, which is opened when it is new; {@link #NO_CHANNEL} when there are too many} */
    public int channel(Channel channel) {
        Integer known = numbers.get(channel);
        if (known != null) {
            return known;
        }
        int number = channels.size();
        if (number == MOST_CHANNELS) {
            return NO_CHANNEL;
        }
        if (number == lowest.length) {
            lowest = Arrays.copyOf(lowest, 2 * number);
            highest = Arrays.copyOf(highest, 2 * number);
            read = Arrays.copyOf(read, 2 * number);
            missing = Arrays.copyOf(missing, 2 * number);
            other = Arrays.copyOf(other, 2 * number);
        }
        channels.add(channel);
        numbers.put(channel, number);
        lowest[number] = channel.measurand().lowest();
        highest[number] = channel.measurand().highest();
        sink.open(number, channel);
        return number;
    }

    /** One value in the SI unit of the channel's kind. What is not finite or cannot be true is counted and goes no further. */
    public void value(long timeNs, int number, double si) {
        if (number < 0) {
            tally.count(Mishap.TOO_MANY_CHANNELS);
        } else if (si >= lowest[number] && si <= highest[number]) {
            read[number]++;
            other[number] |= si != 0;
            tally.reading();
            sink.reading(timeNs, number, si);
        } else {
            missing(number, Mishap.IMPOSSIBLE);
        }
    }

    /** A value that is not there, for a reason. */
    public void missing(int number, Mishap why) {
        tally.count(why);
        if (number >= 0) {
            missing[number]++;
        }
    }

    /** Takes note of the universal time that the bus tells in a line of the log. */
    public void clock(long timeNs, long utcNs) {
        tally.clockAhead(utcNs - timeNs);
    }

    /** {@return all that a person should be told: the mishaps, and the channels that show nothing but placeholders} */
    public List<String> sentences() {
        List<String> told = new ArrayList<>(tally.sentences());
        channels().stream().filter(ChannelCount::isPlaceholder)
            .forEach(count -> told.add("All " + count.readings() + " readings of " + count.channel() + " are 0, which most likely stands for none."));
        return told;
    }

    /** {@return where lines, frames and mishaps are counted} */
    public LogTally tally() {
        return tally;
    }

    /** {@return the channels so far, in the order of their numbers} */
    public List<ChannelCount> channels() {
        List<ChannelCount> counted = new ArrayList<>();
        for (int i = 0; i < channels.size(); i++) {
            counted.add(new ChannelCount(i, channels.get(i), read[i], missing[i], read[i] > 0 && !other[i]));
        }
        return counted;
    }
}
