// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** One frame of a CAN bus, filled anew for each line of a log so that nothing is made for it. */
final class CanFrame {

    static final int MOST_BYTES = 8;
    static final int BROADCAST = 255;

    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    /** Nanoseconds, of whatever the log counts. */
    long timeNs;
    /** Number of the interface within the log. */
    int bus;
    /** The 29-bit identifier. */
    int id;
    /** How many bytes of data, 0 to 8. */
    int length;
    /** The data, the first byte lowest. */
    long data;
    /** The same, with room behind it for {@link Bits}. */
    final byte[] bytes = new byte[2 * MOST_BYTES];

    /** Puts the data where fields are read from. */
    void spread() {
        LONGS.set(bytes, 0, data);
    }

    /** {@return the address of the sender} */
    int source() {
        return id & 0xFF;
    }

    /** {@return the address it is meant for, {@link #BROADCAST} for all} Below format 240 the second byte is an address (J1939-21). */
    int destination() {
        return (id >> 16 & 0xFF) < 240 ? id >> 8 & 0xFF : BROADCAST;
    }

    /** {@return the number of the parameter group, with the data page, without the extended one} */
    int pgn() {
        int group = id >> 8 & 0x1FFFF;
        return (group >> 8 & 0xFF) < 240 ? group & 0x1FF00 : group;
    }

    /** {@return whether the bit is set that NMEA 2000 and J1939 keep 0} */
    boolean isOtherProtocol() {
        return (id & 1 << 25) != 0;
    }

    int byteAt(int index) {
        return (int) (data >>> 8 * index) & 0xFF;
    }
}
