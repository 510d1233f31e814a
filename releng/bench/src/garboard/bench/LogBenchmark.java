// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

import garboard.trial.LogFile;
import garboard.trial.LogImport;
import garboard.trial.log.Channel;
import garboard.trial.log.LogIntake;
import garboard.trial.log.LogOptions;
import garboard.trial.log.LogProgress;
import garboard.trial.log.LogTally;
import garboard.trial.log.ReadingSink;
import garboard.trial.nmea2000.FrameLogReader;

/** Reading a log of 100,000 frames (a quarter of an hour of a busy bus), by itself and into a store. Aim: a million frames a second, so 100 ms. */
@State(Scope.Benchmark)
public class LogBenchmark {

    private static final int MESSAGES = 12_500;
    /** Engine, AC and attitude messages with a digit that changes: eight frames, four of them of a fast packet. */
    private static final String[] FRAMES = {"09F20023#004%dE02E057FFFFF", "09F20123#%x01A00B510870EED", "09F20123#%x18A8D0518003%dB8", "09F20123#%x24400DB034001FF",
        "09F20123#%x3000000004E7FFF", "0CFE062B#9001E7001%d192100", "0CFE052B#DCB13%d77BCB33577", "0DF1192D#01FF7F9%d01A5F7FF"};

    private byte[] log;
    private Path file;
    private Path store;

    @Setup
    public void write() throws IOException {
        StringBuilder text = new StringBuilder();
        Random random = new Random(1);
        for (int i = 0; i < MESSAGES; i++) {
            long microseconds = 1_790_060_400_000_000L + i * 72_000L;
            for (int k = 0; k < FRAMES.length; k++) {
                String frame = FRAMES[k].startsWith("09F20123") ? FRAMES[k].replace("%x", Integer.toHexString(i % 8 * 2)) : FRAMES[k];
                long time = microseconds + 400L * k;
                text.append(String.format(Locale.ROOT, "(%d.%06d) can0 %s%n", time / 1_000_000, time % 1_000_000,
                    frame.replace("%d", Integer.toString(random.nextInt(10))).toUpperCase(Locale.ROOT)));
            }
        }
        log = text.toString().getBytes(StandardCharsets.US_ASCII);
        file = Files.write(Files.createTempFile("bench", ".log"), log);
        store = Files.createTempFile("bench", ".readings");
    }

    @TearDown
    public void delete() throws IOException {
        Files.delete(file);
        Files.delete(store);
    }

    /** Adds up, so that nothing is optimised away. */
    private static final class Sum implements ReadingSink {

        private double sum;

        @Override
        public void open(int number, Channel channel) {
            sum += number;
        }

        @Override
        public void reading(long timeNs, int number, double si) {
            sum += si;
        }
    }

    @Benchmark
    public double decode() throws IOException {
        Sum sum = new Sum();
        FrameLogReader.candump(LogOptions.NONE).read(new ByteArrayInputStream(log), new LogIntake(sum, new LogTally()), LogProgress.NONE);
        return sum.sum;
    }

    @Benchmark
    public LogImport.Outcome importIntoStore() throws IOException {
        LogFile found = LogFile.of(file);
        return LogImport.of(found, found.reader(LogOptions.NONE)).into(store, LogProgress.NONE);
    }
}
