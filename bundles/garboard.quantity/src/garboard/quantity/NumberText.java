// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as a person types it: {@code 12}, {@code 12.5}, {@code 12,5}, {@code 1e-3}, {@code -3}, {@code 3/4}, {@code 1 1/2}.
 * The comma is a decimal comma; {@code 1,500}, which might be a thousand and a half or fifteen hundred, is none of ours, while
 * {@code 0,500} and {@code 1500,125} have one reading only. There are no thousands separators.
 *
 * @param typed the number as it stood
 * @param value what it is worth, finite
 * @param end   index of the first character after it
 */
record NumberText(String typed, double value, int end) {

    private static final String SIGN = "[-+\u2212]?";
    /** Whole number and fraction, or a fraction alone. */
    private static final Pattern FRACTION = Pattern.compile("(" + SIGN + ")(?:(\\d+)[ -])?(\\d+)/(\\d+)(?![\\d.,/])");
    private static final Pattern DECIMAL =
        Pattern.compile(SIGN + "(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)(?:[eE]" + SIGN + "\\d+(?![\\d.,]))?(?![.,]?\\d)(?!/)");
    /** A comma with three digits behind it is a decimal comma to one reader and a thousands comma to the next. */
    private static final Pattern AMBIGUOUS = Pattern.compile(SIGN + "([1-9]\\d{0,2}),(\\d{3})(?![\\d.,])");

    /** {@return the number the text begins with, nothing when it begins otherwise or with one that has two readings} */
    static Optional<NumberText> leading(String text) {
        if (AMBIGUOUS.matcher(text).lookingAt()) {
            return Optional.empty();
        }
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.lookingAt()) {
            double whole = fraction.group(2) == null ? 0 : Double.parseDouble(fraction.group(2));
            double value = whole + Double.parseDouble(fraction.group(3)) / Double.parseDouble(fraction.group(4));
            boolean negative = fraction.group(1).equals("-") || fraction.group(1).equals("\u2212");
            return finite(fraction, negative ? -value : value);
        }
        Matcher decimal = DECIMAL.matcher(text);
        if (decimal.lookingAt()) {
            return finite(decimal, Double.parseDouble(decimal.group().replace('\u2212', '-').replace(',', '.')));
        }
        return Optional.empty();
    }

    /** {@return the number that is the whole text, nothing when there is more or less} */
    static Optional<NumberText> whole(String text) {
        return leading(text).filter(number -> number.end == text.length());
    }

    /** {@return what to write instead when the text begins with a number such as 1,500} */
    static Optional<String> ambiguity(String text) {
        Matcher ambiguous = AMBIGUOUS.matcher(text);
        if (!ambiguous.lookingAt()) {
            return Optional.empty();
        }
        String whole = ambiguous.group(1);
        String behind = ambiguous.group(2);
        return Optional.of("the comma in " + ambiguous.group() + " may be read in two ways; write " + whole + behind + " or "
            + whole + "." + behind);
    }

    private static Optional<NumberText> finite(Matcher found, double value) {
        return Double.isFinite(value) ? Optional.of(new NumberText(found.group(), value, found.end())) : Optional.empty();
    }
}
