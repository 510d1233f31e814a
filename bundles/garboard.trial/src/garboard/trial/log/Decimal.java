// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.util.OptionalDouble;

/** Reads numbers as instruments write them: a sign, digits, a point or another decimal sign, perhaps a power of ten. Nothing else is a number. */
public final class Decimal {

    private static final int LONGEST = 60;

    private Decimal() {
    }

    /** {@return the number, nothing for a text that is none or stands for infinity} Blanks around it do not matter. */
    public static OptionalDouble parse(String text, char decimalSign) {
        String number = text.strip();
        if (number.length() > LONGEST || !isNumber(number, decimalSign)) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(decimalSign == '.' ? number : number.replace(decimalSign, '.'));
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** The same with a decimal point. */
    public static OptionalDouble parse(String text) {
        return parse(text, '.');
    }

    private static boolean isNumber(String text, char decimalSign) {
        int at = sign(text, 0);
        int whole = digits(text, at);
        at += whole;
        int decimals = 0;
        if (at < text.length() && text.charAt(at) == decimalSign) {
            decimals = digits(text, at + 1);
            at += 1 + decimals;
        }
        if (whole + decimals == 0) {
            return false;
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            int exponent = sign(text, at + 1);
            int power = digits(text, exponent);
            return power > 0 && exponent + power == text.length();
        }
        return at == text.length();
    }

    private static int sign(String text, int at) {
        return at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+') ? at + 1 : at;
    }

    private static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at - from;
    }
}
