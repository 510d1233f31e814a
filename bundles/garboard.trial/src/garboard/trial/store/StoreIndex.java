// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.Measurand;

/** What stands at the end of a store: where it came from, its channels, its chunks. */
record StoreIndex(Provenance provenance, List<StoredChannel> channels, List<Chunk> chunks) {

    /** The first and the last bytes of a store, with the version of its form. */
    static final long MARK = 0x4741_5242_4C4F_4731L; // "GARBLOG1"
    /** Offset, length and checksum of the index, and the mark. */
    static final int TRAILER_BYTES = 8 + 4 + 4 + 8;

    byte[] bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        text(out, provenance.file());
        text(out, provenance.format());
        out.writeLong(provenance.bytes());
        text(out, provenance.sha256());
        out.writeBoolean(provenance.isRelative());
        out.writeInt(provenance.told().size());
        for (String sentence : provenance.told()) {
            text(out, sentence);
        }
        out.writeInt(channels.size());
        for (StoredChannel stored : channels) {
            Channel channel = stored.channel();
            Channel.Origin origin = channel.origin();
            for (String part : List.of(channel.measurand().name(), channel.line().name(), channel.instance(), channel.detail(), origin.bus(),
                origin.sender(), origin.message())) {
                text(out, part);
            }
            out.writeLong(stored.readings());
            out.writeLong(stored.missing());
            out.writeBoolean(stored.isSilent());
        }
        out.writeInt(chunks.size());
        for (Chunk chunk : chunks) {
            out.writeInt(chunk.channel());
            out.writeLong(chunk.offset());
            out.writeInt(chunk.length());
            out.writeInt(chunk.count());
            out.writeLong(chunk.firstNs());
            out.writeLong(chunk.lastNs());
            out.writeInt(chunk.checksum());
        }
        return bytes.toByteArray();
    }

    /** Reads an index whose checksum was right. */
    static StoreIndex read(byte[] bytes) throws StoreDamagedException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        try {
            Provenance provenance = new Provenance(text(in), text(in), in.readLong(), text(in), in.readBoolean(), texts(in, in.readInt()));
            int channelCount = in.readInt();
            List<StoredChannel> channels = new ArrayList<>();
            for (int i = 0; i < channelCount; i++) {
                channels.add(new StoredChannel(i, channel(texts(in, 7)), in.readLong(), in.readLong(), in.readBoolean()));
            }
            int chunkCount = in.readInt();
            List<Chunk> chunks = new ArrayList<>();
            for (int i = 0; i < chunkCount; i++) {
                chunks.add(new Chunk(in.readInt(), in.readLong(), in.readInt(), in.readInt(), in.readLong(), in.readLong(), in.readInt()));
            }
            return new StoreIndex(provenance, channels, chunks);
        } catch (IOException | IllegalArgumentException notOurs) { // a measurand of a later version, say
            throw new StoreDamagedException("the list of channels cannot be read; it may have been written by a later version", notOurs);
        }
    }

    private static Channel channel(List<String> parts) {
        return new Channel(Measurand.valueOf(parts.get(0)), AcLine.valueOf(parts.get(1)), parts.get(2), parts.get(3),
            new Channel.Origin(parts.get(4), parts.get(5), parts.get(6)));
    }

    private static void text(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available()) {
            throw new IOException("a text of " + length + " bytes");
        }
        return new String(in.readNBytes(length), StandardCharsets.UTF_8);
    }

    private static List<String> texts(DataInputStream in, int count) throws IOException {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            texts.add(text(in));
        }
        return texts;
    }
}
