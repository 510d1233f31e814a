// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea0183;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * One sentence of NMEA 0183, whole.
 *
 * @param talker the first two letters, {@code P} for a maker's own
 * @param type   the rest of the first field: RPM, XDR ...
 * @param fields what follows it
 * @param timeNs nanoseconds since 1970 that its TAG block tells
 */
record Sentence(String talker, String type, List<String> fields, OptionalLong timeNs) {

    private static final long NS_PER_S = 1_000_000_000L;
    private static final long NS_PER_MS = 1_000_000L;
    private static final int MILLISECOND_DIGITS = 13;

    /** What a text turned out to be. */
    sealed interface Found {
    }

    /** A sentence. */
    record Whole(Sentence sentence) implements Found {
    }

    /** A checksum that does not fit, or none. */
    record WrongChecksum() implements Found {
    }

    /** Not a sentence. */
    record Nothing() implements Found {
    }

    /** {@return what the text is, TAG block and all} */
    static Found in(String text) {
        String line = text.strip();
        OptionalLong time = OptionalLong.empty();
        if (line.startsWith("\\")) {
            int end = line.indexOf('\\', 1);
            Optional<String> block = end < 0 ? Optional.empty() : checked(line.substring(1, end));
            if (block.isEmpty()) {
                return new WrongChecksum();
            }
            time = time(block.get());
            line = line.substring(end + 1);
        }
        if (!line.startsWith("$") && !line.startsWith("!")) {
            return new Nothing();
        }
        Optional<String> body = checked(line.substring(1));
        return body.isEmpty() ? new WrongChecksum() : whole(body.get(), time);
    }

    private static Found whole(String body, OptionalLong time) {
        String[] fields = body.split(",", -1);
        String head = fields[0];
        int talkerLength = head.startsWith("P") ? 1 : 2;
        if (head.length() <= talkerLength) {
            return new Nothing();
        }
        List<String> rest = List.of(fields).subList(1, fields.length);
        return new Whole(new Sentence(head.substring(0, talkerLength), head.substring(talkerLength), rest, time));
    }

    /** {@return what stands before the checksum, when that is right: the exclusive or of all characters, in two hexadecimal digits} */
    private static Optional<String> checked(String text) {
        int star = text.lastIndexOf('*');
        if (star < 0 || text.length() != star + 3) {
            return Optional.empty();
        }
        int sum = 0;
        for (int i = 0; i < star; i++) {
            sum ^= text.charAt(i);
        }
        int told = Character.digit(text.charAt(star + 1), 16) << 4 | Character.digit(text.charAt(star + 2), 16);
        return sum == told ? Optional.of(text.substring(0, star)) : Optional.empty();
    }

    /** {@code c:} and seconds since 1970, or milliseconds when there are thirteen digits. */
    private static OptionalLong time(String block) {
        for (String part : block.split(",")) {
            if (part.matches("c:\\d{9,13}")) {
                long number = Long.parseLong(part.substring(2));
                boolean milliseconds = part.length() - 2 == MILLISECOND_DIGITS;
                return milliseconds || number < Long.MAX_VALUE / NS_PER_S ? OptionalLong.of(number * (milliseconds ? NS_PER_MS : NS_PER_S))
                    : OptionalLong.empty();
            }
        }
        return OptionalLong.empty();
    }

    /** {@return a field, empty where there is none} */
    String field(int index) {
        return index < fields.size() ? fields.get(index) : "";
    }
}
