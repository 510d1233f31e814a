// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32C;

import garboard.trial.log.Channel;
import garboard.trial.log.LogIntake;
import garboard.trial.log.ReadingSink;

/**
 * Writes a store of readings while a log is read, in bounded memory: some ten thousand readings of each channel wait until there are
 * enough to pack. The file takes its name only when it is whole.
 */
public final class ReadingStoreWriter implements ReadingSink, Closeable {

    private static final int FIRST_BUFFER = 64;

    private final Path file;
    private final Path unfinished;
    private final DataOutputStream out;
    private final ChunkCodec codec = new ChunkCodec();
    private final List<Chunk> chunks = new ArrayList<>();
    private final List<Channel> channels = new ArrayList<>();
    private Waiting[] waiting = new Waiting[FIRST_BUFFER];
    private long written;
    private boolean finished;

    private ReadingStoreWriter(Path file, Path unfinished) throws IOException {
        this.file = file;
        this.unfinished = unfinished;
        out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(unfinished), 1 << 16));
        out.writeLong(StoreIndex.MARK);
        written = Long.BYTES;
    }

    /** Readings of a channel that are not yet in the file. */
    private static final class Waiting {

        private long[] times = new long[FIRST_BUFFER];
        private double[] values = new double[FIRST_BUFFER];
        private int count;

        /** Whether there are enough to pack. */
        boolean add(long timeNs, double si) {
            if (count == times.length) {
                times = Arrays.copyOf(times, 2 * count);
                values = Arrays.copyOf(values, 2 * count);
            }
            times[count] = timeNs;
            values[count++] = si;
            return count == Chunk.MOST;
        }
    }

    /** Begins a store beside which, until it is finished, lies the part that is written. */
    public static ReadingStoreWriter create(Path file) throws IOException {
        return new ReadingStoreWriter(file, file.resolveSibling(file.getFileName() + ".unfinished"));
    }

    @Override
    public void open(int number, Channel channel) {
        if (number != channels.size()) {
            throw new IllegalArgumentException("channel " + number + " follows channel " + (channels.size() - 1));
        }
        channels.add(channel);
        if (number == waiting.length) {
            waiting = Arrays.copyOf(waiting, 2 * number);
        }
        waiting[number] = new Waiting();
    }

    /**
     * @throws UncheckedIOException when the file cannot be written
     */
    @Override
    public void reading(long timeNs, int number, double si) {
        if (waiting[number].add(timeNs, si)) {
            try {
                pack(number);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }

    private void pack(int number) throws IOException {
        Waiting full = waiting[number];
        int length = codec.pack(full.times, full.values, full.count);
        CRC32C checksum = new CRC32C();
        checksum.update(codec.bytes(), 0, length);
        out.write(codec.bytes(), 0, length);
        chunks.add(new Chunk(number, written, length, full.count, Arrays.stream(full.times, 0, full.count).min().orElseThrow(),
            Arrays.stream(full.times, 0, full.count).max().orElseThrow(), (int) checksum.getValue()));
        written += length;
        full.count = 0;
    }

    /** Packs the rest, writes where it all came from and what is where, and gives the file its name, in place of an earlier one. */
    public void finish(Provenance provenance, List<LogIntake.ChannelCount> counts) throws IOException {
        for (int i = 0; i < channels.size(); i++) {
            if (waiting[i].count > 0) {
                pack(i);
            }
        }
        List<StoredChannel> stored = counts.stream().map(count -> new StoredChannel(count.number(), count.channel(), count.readings(),
            count.missing(), count.readings() == 0 || count.isPlaceholder())).toList();
        byte[] index = new StoreIndex(provenance, stored, chunks).bytes();
        CRC32C checksum = new CRC32C();
        checksum.update(index);
        out.write(index);
        out.writeLong(written);
        out.writeInt(index.length);
        out.writeInt((int) checksum.getValue());
        out.writeLong(StoreIndex.MARK);
        out.close();
        finished = true;
        try {
            Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException otherwise) {
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Takes away what is not finished. */
    @Override
    public void close() throws IOException {
        if (!finished) {
            out.close();
            Files.deleteIfExists(unfinished);
        }
    }
}
