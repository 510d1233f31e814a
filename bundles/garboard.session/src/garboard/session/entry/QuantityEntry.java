// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import static garboard.session.entry.Refusal.because;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import garboard.quantity.Kind;
import garboard.quantity.QuantityFormatException;
import garboard.quantity.Ratio;
import garboard.session.entry.Refusal.Reason;

/**
 * Reads a quantity as it is typed into a field: a bare number is taken in the field's unit, and the beginning of an entry is told from a
 * wrong one.
 */
final class QuantityEntry {

    private static final String SIGN = "[-+\u2212]?";
    private static final Pattern ACCURACY = Pattern.compile("±|\\+/-|\\+-|\\+\u2212");
    private static final Pattern FRACTION = Pattern.compile(SIGN + "(?:\\d+[ -])?\\d+/\\d+");
    private static final Pattern DECIMAL = Pattern.compile(SIGN + "(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)(?:[eE]" + SIGN + "\\d+)?");
    /** A sign, a number up to its point or stroke, a whole number and the numerator behind it. */
    private static final Pattern NUMBER_BEGUN = Pattern.compile(SIGN + "(?:\\d+[.,]|[.,]|(?:\\d+[ -])?\\d+/|\\d+[ -]\\d+|\\d+(?:[.,]\\d+)?[eE]" + SIGN + ")?");
    /** Behind a reading: an accuracy whose sign or number has only begun. */
    private static final Pattern ACCURACY_BEGUN = Pattern.compile("(.*\\S)\\s*(?:(?:\\+|\\+/)|(?:±|\\+/-|\\+-|\\+\u2212)\\s*(?:\\d*[.,]?))");
    private static final Pattern UNIT_BEHIND = Pattern.compile("^.*[\\d.,]\\s*(\\D+)$");
    private static final int NAMED = 6;
    /** A pure number above this, in a field that is read in per cent or millionths, is one without its unit. */
    private static final double PURE_PER_CENT = 1;
    private static final double PURE_MILLIONTHS = 0.01;

    private final Kind<?> kind;
    private final String unit;

    QuantityEntry(Class<?> type, String unit) {
        this.kind = Kind.ofType(type).orElseThrow();
        this.unit = unit;
    }

    Reading read(String text) {
        String tidy = text.replace('\u00a0', ' ').strip().replaceAll("\\s+", " ");
        Matcher sign = ACCURACY.matcher(tidy);
        String number = sign.find() ? tidy.substring(0, sign.start()).strip() : tidy;
        boolean bare = FRACTION.matcher(number).matches() || DECIMAL.matcher(number).matches();
        if (!bare || unit.equals("1")) {
            return parsed(text, tidy, Optional.empty());
        }
        if (FRACTION.matcher(number).matches() && (unit.equals("mm") || unit.equals("m"))) {
            // Nobody measures in fractions of a millimetre: what is meant is most likely inches, and guessing would be wrong.
            return new Reading.Begun(List.of("in"), because(Reason.FRACTION_WITHOUT_UNIT, number, unit));
        }
        if (kind.type() == Ratio.class && isPure(number)) {
            return parsed(text, tidy, Optional.empty());
        }
        return parsed(text, (number + " " + unit + " " + tidy.substring(number.length())).strip(), Optional.of(unit));
    }

    private boolean isPure(String number) {
        try {
            double value = Math.abs(Ratio.valueOf(number).si());
            return value <= (unit.equals("ppm") ? PURE_MILLIONTHS : PURE_PER_CENT);
        } catch (QuantityFormatException ambiguous) {
            return false;
        }
    }

    private Reading parsed(String text, String whole, Optional<String> unitAdded) {
        try {
            return new Reading.Entered(kind.parse(whole), unitAdded);
        } catch (QuantityFormatException refused) {
            return refused(text.strip(), QuantityRefusal.of(refused.getMessage(), kind));
        }
    }

    private Reading refused(String text, Refusal why) {
        if (NUMBER_BEGUN.matcher(text).matches()) {
            return new Reading.Begun(List.of(), because(Reason.ONLY_BEGUN));
        }
        Matcher accuracy = ACCURACY_BEGUN.matcher(text);
        if (accuracy.matches() && read(accuracy.group(1)) instanceof Reading.Entered) {
            return new Reading.Begun(List.of(), because(Reason.ONLY_BEGUN));
        }
        return switch (why.reason()) {
            case UNIT_UNKNOWN, UNIT_MEANT -> unitBegun(text, why);
            case ACCURACY_WITHOUT_UNIT -> new Reading.Begun(List.of("%", why.facts().getLast()), why);
            default -> new Reading.Refused(why);
        };
    }

    private Reading unitBegun(String text, Refusal why) {
        Matcher behind = UNIT_BEHIND.matcher(text);
        String typed = behind.matches() ? behind.group(1).strip() : "";
        if (typed.isEmpty()) {
            return new Reading.Refused(why);
        }
        List<String> goesOn = kind.units().stream().filter(known -> begins(known, typed)).toList();
        return goesOn.isEmpty() ? new Reading.Refused(why) : new Reading.Begun(goesOn.subList(0, Math.min(NAMED, goesOn.size())), why);
    }

    private static boolean begins(String unit, String typed) {
        return unit.length() > typed.length() && unit.regionMatches(true, 0, typed.replace('\u00b0', 'd'), 0, typed.length());
    }
}
