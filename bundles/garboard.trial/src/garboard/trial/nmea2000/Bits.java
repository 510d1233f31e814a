// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Reads numbers out of a payload: little-endian, bit 0 of a byte its lowest. */
final class Bits {

    /** Room that a payload must have behind its last byte. */
    static final int ROOM = 8;

    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private Bits() {
    }

    /** Up to 57 bits from a bit on; the payload has {@link #ROOM} behind its last byte. */
    static long unsigned(byte[] payload, int fromBit, int bits) {
        return (long) LONGS.get(payload, fromBit >> 3) >>> (fromBit & 7) & (1L << bits) - 1;
    }

    /** A number of so many bits as two's complement. */
    static long signed(long unsigned, int bits) {
        return unsigned << 64 - bits >> 64 - bits;
    }
}
