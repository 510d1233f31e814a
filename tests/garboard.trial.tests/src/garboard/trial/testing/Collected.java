// SPDX-License-Identifier: EPL-2.0
package garboard.trial.testing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import garboard.trial.log.Channel;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogProgress;
import garboard.trial.log.LogReader;
import garboard.trial.log.LogTally;
import garboard.trial.log.Measurand;
import garboard.trial.log.ReadingSink;

/** All that came out of a log, in memory. */
public final class Collected implements ReadingSink {

    private final List<Channel> channels = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final LogTally tally = new LogTally();
    private final LogIntake intake = new LogIntake(this, tally);

    /** One reading. */
    public record Reading(long timeNs, Channel channel, double si) {
    }

    /** {@return what a reader makes of the bytes} */
    public static Collected from(LogReader reader, byte[] log) {
        Collected collected = new Collected();
        try {
            reader.read(new ByteArrayInputStream(log), collected.intake, LogProgress.NONE);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return collected;
    }

    /** {@return what a reader makes of some lines} */
    public static Collected from(LogReader reader, String... lines) {
        return from(reader, String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void open(int number, Channel channel) {
        if (number != channels.size()) {
            throw new IllegalStateException("channel " + number + " opened as number " + channels.size());
        }
        channels.add(channel);
    }

    @Override
    public void reading(long timeNs, int number, double si) {
        readings.add(new Reading(timeNs, channels.get(number), si));
    }

    public LogTally tally() {
        return tally;
    }

    public LogIntake intake() {
        return intake;
    }

    public List<Reading> readings() {
        return readings;
    }

    /** {@return the readings of what passes} */
    public List<Reading> readings(Predicate<Channel> which) {
        return readings.stream().filter(reading -> which.test(reading.channel())).toList();
    }

    /** {@return the values of one measurand in the order of the log} */
    public List<Double> values(Measurand measurand) {
        return readings(channel -> channel.measurand() == measurand).stream().map(Reading::si).toList();
    }
}
