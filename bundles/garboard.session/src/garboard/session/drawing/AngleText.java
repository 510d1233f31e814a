// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An angle of heel or trim as a person types it: {@code 12}, {@code -12}, {@code 12.5°}, {@code 12 port}, {@code 3 deg down}. Positive is
 * starboard side down, or bow up. The words of both languages of the window are taken whatever the language.
 */
public enum AngleText {
    HEEL(List.of("starboard", "stbd", "stb", "s", "steuerbord", "nach steuerbord", "to starboard"),
        List.of("port", "p", "bb", "b", "backbord", "nach backbord", "to port")),
    TRIM(List.of("up", "bow up", "u", "hoch", "bug hoch", "h"), List.of("down", "bow down", "d", "tief", "bug tief", "t"));

    private static final Pattern TYPED =
        Pattern.compile("([-+\u2212]?)\\s*(\\d+(?:[.,]\\d+)?|[.,]\\d+)\\s*(?:\u00b0|deg|degrees|grad)?\\s*(\\p{L}[\\p{L} ]*)?");

    private final List<String> positive;
    private final List<String> negative;

    AngleText(List<String> positive, List<String> negative) {
        this.positive = positive;
        this.negative = negative;
    }

    /** {@return the angle in degrees, nothing when the text is none, or has a sign and a side that gainsay each other} */
    public OptionalDouble read(String text) {
        Matcher typed = TYPED.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!typed.matches()) {
            return OptionalDouble.empty();
        }
        double degrees = Double.parseDouble(typed.group(2).replace(',', '.'));
        boolean minus = typed.group(1).equals("-") || typed.group(1).equals("\u2212");
        Optional<String> side = Optional.ofNullable(typed.group(3)).map(String::strip);
        if (side.isEmpty()) {
            return OptionalDouble.of(minus ? -degrees : degrees);
        }
        if (minus || !positive.contains(side.get()) && !negative.contains(side.get())) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(negative.contains(side.get()) ? -degrees : degrees);
    }

    /** {@return an angle as it is typed: whole degrees without a point, else one decimal} */
    public static String written(double degrees) {
        double tenths = Math.rint(Math.abs(degrees) * 10) / 10;
        return tenths == Math.rint(tenths) ? String.valueOf((long) tenths) : String.valueOf(tenths);
    }
}
