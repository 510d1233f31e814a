// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

/** Walks through the bytes of a line. Nothing is made on the way, and no walk leaves the line. */
public final class TextCursor {

    /** Nine digits make nanoseconds. */
    private static final int FRACTION_DIGITS = 9;
    private static final int MOST_DIGITS = 18;
    private static final byte[] HEX = new byte[256];

    static {
        for (int i = 0; i < HEX.length; i++) {
            HEX[i] = (byte) Character.digit(i < 128 ? (char) i : ' ', 16);
        }
    }

    private byte[] bytes = new byte[0];
    private int at;
    private int end;

    /** Goes to the beginning of a line. */
    public void set(byte[] line, int from, int to) {
        bytes = line;
        at = from;
        end = to;
    }

    /** {@return where the cursor is among the bytes} */
    public int at() {
        return at;
    }

    /** Goes to a place within the line. */
    public void goTo(int place) {
        at = Math.min(place, end);
    }

    /** {@return whether nothing is left} */
    public boolean isAtEnd() {
        return at >= end;
    }

    /** {@return the byte here without going on, -1 at the end} */
    public int peek() {
        return at < end ? bytes[at] & 0xFF : -1;
    }

    /** Goes over a character if it is here; whether it was. */
    public boolean take(char c) {
        if (at < end && bytes[at] == c) {
            at++;
            return true;
        }
        return false;
    }

    /** Goes over blanks; whether there were any. */
    public boolean takeBlanks() {
        int from = at;
        while (at < end && (bytes[at] == ' ' || bytes[at] == '\t')) {
            at++;
        }
        return at > from;
    }

    /** Goes over what is neither blank nor the character; where it began. */
    public int takeWord(char stop) {
        int from = at;
        while (at < end && bytes[at] != ' ' && bytes[at] != '\t' && bytes[at] != stop) {
            at++;
        }
        return from;
    }

    /** A number of up to 18 digits; -1 for none or more. */
    public long takeDigits() {
        int from = at;
        long number = 0;
        while (at < end && bytes[at] >= '0' && bytes[at] <= '9') {
            if (at - from == MOST_DIGITS) {
                return -1;
            }
            number = 10 * number + bytes[at++] - '0';
        }
        return at > from ? number : -1;
    }

    /**
     * A point and decimals as nanoseconds; -1 where there is no digit behind a point, 0 where there is no point. Beyond nine, digits do not
     * count.
     */
    public long takeNanoseconds() {
        if (!take('.')) {
            return 0;
        }
        int from = at;
        long number = 0;
        while (at < end && bytes[at] >= '0' && bytes[at] <= '9') {
            if (at - from < FRACTION_DIGITS) {
                number = 10 * number + bytes[at] - '0';
            }
            at++;
        }
        if (at == from) {
            return -1;
        }
        for (int digits = at - from; digits < FRACTION_DIGITS; digits++) {
            number *= 10;
        }
        return number;
    }

    /** {@return the value of the hexadecimal digit here, going over it; -1 where there is none} */
    public int takeHexDigit() {
        int value = at < end ? HEX[bytes[at] & 0xFF] : -1;
        if (value >= 0) {
            at++;
        }
        return value;
    }

    /** {@return the value of two hexadecimal digits, going over them; -1 where there are not two} */
    public int takeHexByte() {
        if (at + 1 >= end) {
            return -1;
        }
        int value = HEX[bytes[at] & 0xFF] << 4 | HEX[bytes[at + 1] & 0xFF];
        if (value >= 0) {
            at += 2;
        }
        return value;
    }
}
