// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * Packs readings without loss. Times are differences in the coarsest unit that fits them all; values, of which an instrument has few
 * different ones, are places in a list of those that occur, or else the bytes of the doubles, byte by byte of equal weight together. Both
 * are deflated.
 */
final class ChunkCodec {

    private static final long[] UNITS_NS = {1_000_000_000, 1_000_000, 1_000, 1};
    private static final int LIST_OF_BYTES = 256;
    /** Beyond so many different values the list itself is what takes the room. */
    private static final int LIST_OF_SHORTS = 1024;
    private static final byte AS_BYTES = 1;
    private static final byte AS_SHORTS = 2;
    private static final byte AS_DOUBLES = 0;
    /** Header, times at their longest, list and values at their longest. */
    private static final int LONGEST = 32 + Chunk.MOST * (10 + 8) + LIST_OF_SHORTS * 8;

    private final ByteBuffer plain = ByteBuffer.allocate(LONGEST);
    private final byte[] packed = new byte[LONGEST + 1024];
    private final double[] sorted = new double[Chunk.MOST];

    /** Packs so many readings; {@link #bytes()} up to the answer are theirs. */
    int pack(long[] times, double[] values, int count) {
        plain.clear();
        packTimes(times, count);
        packValues(values, count);
        Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);
        try {
            deflater.setInput(plain.array(), 0, plain.position());
            deflater.finish();
            return deflater.deflate(packed);
        } finally {
            deflater.end();
        }
    }

    byte[] bytes() {
        return packed;
    }

    private void packTimes(long[] times, int count) {
        byte unit = 0;
        while (!fits(times, count, UNITS_NS[unit])) {
            unit++;
        }
        plain.put(unit).putLong(times[0]);
        for (int i = 1; i < count; i++) {
            putNumber((times[i] - times[i - 1]) / UNITS_NS[unit]);
        }
    }

    private static boolean fits(long[] times, int count, long unit) {
        for (int i = 1; i < count; i++) {
            if ((times[i] - times[i - 1]) % unit != 0) {
                return false;
            }
        }
        return true;
    }

    /** Sign last, seven bits to a byte, the highest bit telling that more follow. */
    private void putNumber(long number) {
        long rest = number << 1 ^ number >> 63;
        while ((rest & ~0x7FL) != 0) {
            plain.put((byte) (rest & 0x7F | 0x80));
            rest >>>= 7;
        }
        plain.put((byte) rest);
    }

    private long takeNumber() {
        long number = 0;
        for (int shift = 0; shift < 70; shift += 7) {
            byte next = plain.get();
            number |= (next & 0x7FL) << shift;
            if (next >= 0) {
                break;
            }
        }
        return number >>> 1 ^ -(number & 1);
    }

    private void packValues(double[] values, int count) {
        System.arraycopy(values, 0, sorted, 0, count);
        Arrays.sort(sorted, 0, count);
        int different = 0;
        for (int i = 0; i < count; i++) {
            if (different == 0 || Double.doubleToRawLongBits(sorted[i]) != Double.doubleToRawLongBits(sorted[different - 1])) {
                sorted[different++] = sorted[i];
            }
        }
        byte form = different <= LIST_OF_BYTES ? AS_BYTES : different <= LIST_OF_SHORTS ? AS_SHORTS : AS_DOUBLES;
        plain.put(form);
        if (form == AS_DOUBLES) {
            putDoubles(values, count);
            return;
        }
        plain.putShort((short) different);
        putDoubles(sorted, different);
        for (int i = 0; i < count; i++) {
            int place = Arrays.binarySearch(sorted, 0, different, values[i]);
            if (form == AS_BYTES) {
                plain.put((byte) place);
            } else {
                plain.putShort((short) place);
            }
        }
    }

    private void putDoubles(double[] values, int count) {
        for (int shift = 56; shift >= 0; shift -= 8) {
            for (int i = 0; i < count; i++) {
                plain.put((byte) (Double.doubleToRawLongBits(values[i]) >>> shift));
            }
        }
    }

    private void takeDoubles(double[] values, int count) {
        long[] bits = new long[count];
        for (int shift = 56; shift >= 0; shift -= 8) {
            for (int i = 0; i < count; i++) {
                bits[i] |= (plain.get() & 0xFFL) << shift;
            }
        }
        for (int i = 0; i < count; i++) {
            values[i] = Double.longBitsToDouble(bits[i]);
        }
    }

    /**
     * Unpacks so many readings.
     *
     * @throws StoreDamagedException when the bytes hold something else
     */
    void unpack(byte[] bytes, int length, long[] times, double[] values, int count) throws StoreDamagedException {
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(bytes, 0, length);
            plain.clear();
            int got = inflater.inflate(plain.array());
            plain.limit(got);
            unpackTimes(times, count);
            unpackValues(values, count);
        } catch (DataFormatException | BufferUnderflowException | IndexOutOfBoundsException wrong) {
            throw new StoreDamagedException("a part of the readings cannot be unpacked", wrong);
        } finally {
            inflater.end();
        }
    }

    private void unpackTimes(long[] times, int count) {
        long unit = UNITS_NS[plain.get()];
        times[0] = plain.getLong();
        for (int i = 1; i < count; i++) {
            times[i] = times[i - 1] + takeNumber() * unit;
        }
    }

    private void unpackValues(double[] values, int count) {
        byte form = plain.get();
        if (form == AS_DOUBLES) {
            takeDoubles(values, count);
            return;
        }
        double[] list = new double[plain.getShort() & 0xFFFF];
        takeDoubles(list, list.length);
        for (int i = 0; i < count; i++) {
            values[i] = list[form == AS_BYTES ? plain.get() & 0xFF : plain.getShort()];
        }
    }
}
