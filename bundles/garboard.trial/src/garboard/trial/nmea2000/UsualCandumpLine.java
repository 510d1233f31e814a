// SPDX-License-Identifier: EPL-2.0
package garboard.trial.nmea2000;

/**
 * The one form that nearly every line of a candump log has: {@code (1790060400.001950) can0 09F20023#004130D4037FFFFF}: seconds since 1970
 * of ten digits with six decimals, the interface of the line before, a data frame with long identifier. It is read without looking left
 * or right, in a third of the time that {@link CandumpLine} takes; what is the least different is left to that.
 */
final class UsualCandumpLine {

    private static final int SECONDS_AT = 1;
    private static final int SECOND_DIGITS = 10;
    private static final int POINT_AT = SECONDS_AT + SECOND_DIGITS;
    private static final int MICROSECOND_DIGITS = 6;
    private static final int CLOSING_AT = POINT_AT + 1 + MICROSECOND_DIGITS;
    private static final int NAME_AT = CLOSING_AT + 2;
    private static final int IDENTIFIER_DIGITS = 8;
    private static final long FIRST_IDENTIFIER_WITH_FLAG = 0x20000000L;
    private static final long NS_PER_S = 1_000_000_000L;
    private static final long NS_PER_MICROSECOND = 1000;
    /** Of seconds with ten digits; below, and with a first digit 0, the log may count from its start. */
    private static final long LEAST_SECONDS = 1_000_000_000L;
    /** The values of hexadecimal digits; what is none is negative, and stays so when shifted and joined with others. */
    private static final int[] HEX = new int[256];

    static {
        for (int i = 0; i < HEX.length; i++) {
            HEX[i] = Character.digit(i < 128 ? (char) i : ' ', 16);
        }
    }

    private byte[] name = new byte[0];
    private int bus = -1;

    /** Says which interface the line before had. */
    void learn(byte[] interfaceName, int number) {
        name = interfaceName;
        bus = number;
    }

    /** Whether the line had the usual form and the frame was filled. */
    boolean read(byte[] b, int from, int to, CanFrame frame) {
        int identifierAt = from + NAME_AT + name.length + 1;
        int dataAt = identifierAt + IDENTIFIER_DIGITS + 1;
        int digits = to - dataAt;
        if (bus < 0 || digits < 0 || digits > 2 * CanFrame.MOST_BYTES || (digits & 1) != 0 || b[from] != '(' || b[from + POINT_AT] != '.'
            || b[from + CLOSING_AT] != ')' || b[from + CLOSING_AT + 1] != ' ' || b[identifierAt - 1] != ' ' || b[dataAt - 1] != '#') {
            return false;
        }
        for (int i = 0; i < name.length; i++) {
            if (b[from + NAME_AT + i] != name[i]) {
                return false;
            }
        }
        long seconds = number(b, from + SECONDS_AT, SECOND_DIGITS);
        long microseconds = number(b, from + POINT_AT + 1, MICROSECOND_DIGITS);
        long identifier = hex(b, identifierAt);
        if (seconds < LEAST_SECONDS || microseconds < 0 || identifier < 0 || identifier >= FIRST_IDENTIFIER_WITH_FLAG) {
            return false;
        }
        long data = 0;
        int wrong = 0;
        for (int i = 0; i < digits; i += 2) {
            int value = HEX[b[dataAt + i] & 0xFF] << 4 | HEX[b[dataAt + i + 1] & 0xFF];
            wrong |= value;
            data |= (long) value << 4 * i;
        }
        if (wrong < 0) {
            return false;
        }
        frame.timeNs = seconds * NS_PER_S + microseconds * NS_PER_MICROSECOND;
        frame.bus = bus;
        frame.id = (int) identifier;
        frame.length = digits >> 1;
        frame.data = data;
        return true;
    }

    /** A number of so many decimal digits, negative where one is none. */
    private static long number(byte[] b, int from, int digits) {
        long number = 0;
        int wrong = 0;
        for (int i = from; i < from + digits; i++) {
            int digit = b[i] - '0';
            wrong |= digit | 9 - digit;
            number = 10 * number + digit;
        }
        return wrong < 0 ? -1 : number;
    }

    /** A number of eight hexadecimal digits, negative where one is none. */
    private static long hex(byte[] b, int from) {
        int number = 0;
        int wrong = 0;
        for (int i = from; i < from + IDENTIFIER_DIGITS; i++) {
            int digit = HEX[b[i] & 0xFF];
            wrong |= digit;
            number = number << 4 | digit;
        }
        return wrong < 0 ? -1 : number & 0xFFFFFFFFL;
    }
}
