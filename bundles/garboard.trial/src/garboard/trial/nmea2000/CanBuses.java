// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Numbers the interfaces of a log, so that nothing is made for the name in each line. */
final class CanBuses {

    /** More interfaces than a logger can have. */
    static final int MOST = 64;
    static final int LONGEST_NAME = 40;

    private final List<byte[]> names = new ArrayList<>();

    /** {@return the number of the name within the bytes, -1 when it is too long or one too many} */
    int number(byte[] bytes, int from, int to) {
        for (int i = 0; i < names.size(); i++) {
            byte[] name = names.get(i);
            if (Arrays.equals(name, 0, name.length, bytes, from, to)) {
                return i;
            }
        }
        if (names.size() == MOST || to - from > LONGEST_NAME) {
            return -1;
        }
        names.add(Arrays.copyOfRange(bytes, from, to));
        return names.size() - 1;
    }

    /** {@return the name as it stands in the log, not to be changed} */
    byte[] bytes(int number) {
        return names.get(number);
    }

    String name(int number) {
        return new String(names.get(number), StandardCharsets.UTF_8);
    }
}
