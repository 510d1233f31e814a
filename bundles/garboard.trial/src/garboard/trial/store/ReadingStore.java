// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * The readings of a log, kept in a file beside the record: packed without loss, each part with its checksum, so that a change or a cut is
 * found when it is read. Of the file no more than one part is in memory at a time. Not for several threads at once.
 */
public final class ReadingStore implements Closeable {

    /** The ending of such files. */
    public static final String ENDING = ".readings";

    private final FileChannel file;
    private final StoreIndex index;
    private final ChunkCodec codec = new ChunkCodec();
    private final long[] times = new long[Chunk.MOST];
    private final double[] values = new double[Chunk.MOST];

    private ReadingStore(FileChannel file, StoreIndex index) {
        this.file = file;
        this.index = index;
    }

    /**
     * Opens a store.
     *
     * @throws StoreDamagedException when it is none, is cut off, or its list of contents was changed
     */
    public static ReadingStore open(Path path) throws IOException {
        FileChannel file = FileChannel.open(path, StandardOpenOption.READ);
        try {
            return new ReadingStore(file, index(file));
        } catch (IOException refused) {
            file.close();
            throw refused;
        }
    }

    private static StoreIndex index(FileChannel file) throws IOException {
        long size = file.size();
        if (size < Long.BYTES + StoreIndex.TRAILER_BYTES || bytes(file, 0, Long.BYTES).getLong() != StoreIndex.MARK) {
            throw new StoreDamagedException("the file is no store of readings, or of a later version");
        }
        ByteBuffer trailer = bytes(file, size - StoreIndex.TRAILER_BYTES, StoreIndex.TRAILER_BYTES);
        long offset = trailer.getLong();
        int length = trailer.getInt();
        int checksum = trailer.getInt();
        if (trailer.getLong() != StoreIndex.MARK || offset < Long.BYTES || length < 0 || offset + length != size - StoreIndex.TRAILER_BYTES) {
            throw new StoreDamagedException("the store of readings is cut off");
        }
        ByteBuffer bytes = bytes(file, offset, length);
        if (checksum(bytes.array(), length) != checksum) {
            throw new StoreDamagedException("the list of contents of the readings was changed");
        }
        return StoreIndex.read(bytes.array());
    }

    private static ByteBuffer bytes(FileChannel file, long offset, int length) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(length);
        while (bytes.hasRemaining()) {
            if (file.read(bytes, offset + bytes.position()) < 0) {
                throw new StoreDamagedException("the store of readings is cut off");
            }
        }
        return bytes.flip();
    }

    private static int checksum(byte[] bytes, int length) {
        CRC32C checksum = new CRC32C();
        checksum.update(bytes, 0, length);
        return (int) checksum.getValue();
    }

    /** {@return where the readings came from} */
    public Provenance provenance() {
        return index.provenance();
    }

    /** {@return all channels, also those that never had a reading} */
    public List<StoredChannel> channels() {
        return index.channels();
    }

    /** {@return the channel with a key} See {@link garboard.trial.log.Channel#key()}. */
    public Optional<StoredChannel> withKey(String key) {
        return index.channels().stream().filter(stored -> stored.channel().key().equals(key)).findFirst();
    }

    /** {@return from when to when there are readings, nothing for none} */
    public Optional<TimeRange> range() {
        return index.chunks().stream().map(chunk -> new TimeRange(chunk.firstNs(), chunk.lastNs())).reduce(TimeRange::with);
    }

    /**
     * Shows the readings of a channel in the order of the log, from a time on and before another.
     *
     * @throws StoreDamagedException when a part was changed
     */
    public void read(int channel, long fromNs, long toNs, ReadingVisitor visitor) throws IOException {
        for (Chunk chunk : index.chunks()) {
            if (chunk.channel() == channel && chunk.touches(fromNs, toNs)) {
                unpack(chunk);
                for (int i = 0; i < chunk.count(); i++) {
                    if (times[i] >= fromNs && times[i] < toNs) {
                        visitor.reading(times[i], values[i]);
                    }
                }
            }
        }
    }

    /** Shows all readings of a channel. */
    public void read(int channel, ReadingVisitor visitor) throws IOException {
        read(channel, Long.MIN_VALUE, Long.MAX_VALUE, visitor);
    }

    /** {@return a channel thinned out for a plot of so many columns, with all its extremes} */
    public Plot plot(int channel, long fromNs, long toNs, int columns) throws IOException {
        PlotColumns plot = new PlotColumns(fromNs, toNs, columns);
        read(channel, fromNs, toNs, plot);
        return plot.plot();
    }

    /**
     * Reads the whole store.
     *
     * @throws StoreDamagedException when any part of it was changed
     */
    public void verify() throws IOException {
        for (Chunk chunk : index.chunks()) {
            unpack(chunk);
        }
    }

    private void unpack(Chunk chunk) throws IOException {
        if (chunk.count() < 1 || chunk.count() > Chunk.MOST || chunk.length() < 0 || chunk.offset() + chunk.length() > file.size()) {
            throw new StoreDamagedException("the list of contents names a part that is not there");
        }
        ByteBuffer bytes = bytes(file, chunk.offset(), chunk.length());
        if (checksum(bytes.array(), chunk.length()) != chunk.checksum()) {
            throw new StoreDamagedException("readings of " + index.channels().get(chunk.channel()).channel() + " were changed");
        }
        codec.unpack(bytes.array(), chunk.length(), times, values, chunk.count());
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
