// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The fields of one parameter group.
 *
 * @param pgn    its number
 * @param name   what it is about
 * @param fast   whether it goes in fast packets, which its length does not tell
 * @param fields all fields we know, in the order of their bits
 * @param keys   the fields that tell what the others are about
 */
record MessageLayout(int pgn, String name, boolean fast, List<FieldLayout> fields, Map<Key, FieldLayout> keys) {

    /** What the AC messages repeat for each line: bytes. */
    static final int LINE_BYTES = 18;

    /** What a field tells about the others. */
    enum Key {
        /** Which engine, battery, tank or connection. */
        INSTANCE,
        /** Which liquid, which place ...; see {@link Codes}. */
        CODE,
        /** How many lines follow. */
        LINES,
        /** Which line it is. */
        LINE,
        /** Days since 1970. */
        DAY,
        /** Time since midnight. */
        TIME
    }

    MessageLayout {
        fields = List.copyOf(fields);
        keys = Map.copyOf(keys);
    }

    Optional<FieldLayout> key(Key key) {
        return Optional.ofNullable(keys.get(key));
    }

    FieldLayout[] readings() {
        return fields.stream().filter(FieldLayout::isReading).toArray(FieldLayout[]::new);
    }
}
