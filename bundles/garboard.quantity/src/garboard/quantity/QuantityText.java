// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads "number unit ±accuracy" for one kind. What is found comes back as typed, only runs of spaces become one.
 */
final class QuantityText {

    private static final Pattern ACCURACY_SIGN = Pattern.compile("±|\\+/-|\\+-|\\+\u2212");
    /** 5 ft 3 in, 5' 3 1/2": whole feet, then inches. */
    private static final Pattern FEET_AND_INCHES =
        Pattern.compile("([-+\u2212]?)(\\d+) ?(ft|feet|foot|['\u2032\u2019]) ?(\\d.*?) ?(in|inch|inches|[\"\u2033\u201d])");
    private static final double INCHES_IN_A_FOOT = 12;

    private final UnitTable table;
    private final String text;

    private QuantityText(UnitTable table, String text) {
        this.table = table;
        this.text = text;
    }

    /**
     * @throws QuantityFormatException when the text is no quantity of the kind; the message says why and what would be right
     */
    static Given read(UnitTable table, String text) {
        return new QuantityText(table, text).read();
    }

    private Given read() {
        String tidy = text.replace('\u00a0', ' ').strip().replaceAll("\\s+", " ");
        Matcher sign = ACCURACY_SIGN.matcher(tidy);
        if (!sign.find()) {
            return reading(tidy);
        }
        Given reading = reading(tidy.substring(0, sign.start()).strip());
        return reading.with(accuracy(reading, tidy.substring(sign.end()).strip()));
    }

    private Given reading(String tidy) {
        Optional<Given> feetAndInches = table.kindName().equals("length") ? feetAndInches(tidy) : Optional.empty();
        if (feetAndInches.isPresent()) {
            return feetAndInches.get();
        }
        NumberText number = number(tidy);
        String unit = unit(tidy.substring(number.end()).strip());
        return Given.typed(number.typed(), number.value(), unit);
    }

    private NumberText number(String tidy) {
        if (tidy.isEmpty()) {
            throw refused("nothing is written; " + table.unitWanted().replaceFirst("give a unit", "give a number and a unit"));
        }
        Optional<String> ambiguity = NumberText.ambiguity(tidy);
        if (ambiguity.isPresent()) {
            throw refused(ambiguity.get());
        }
        return NumberText.leading(tidy).orElseThrow(
            () -> refused("it does not begin with a number that can be read; write for example 12, 12.5, 3/4, 1 1/2 or 1e-3, "
                + "without thousands separators"));
    }

    private String unit(String typed) {
        if (typed.isEmpty()) {
            if (table.unitMayBeLeftOut()) {
                return Given.PURE;
            }
            throw refused(table.unitWanted());
        }
        if (table.find(typed).isEmpty()) {
            throw refused(Character.isDigit(typed.charAt(0))
                ? "there is a second number, " + typed + "; write thousands without a gap" : table.refusal(typed));
        }
        return typed;
    }

    private Accuracy accuracy(Given reading, String tidy) {
        NumberText halfWidth = number(tidy);
        if (halfWidth.value() < 0) {
            throw refused("an accuracy is a half width and has no sign of its own; write ±" + DecimalText.of(-halfWidth.value()));
        }
        String unit = tidy.substring(halfWidth.end()).strip();
        if (unit.isEmpty() && reading.unit().equals(Given.PURE)) {
            return new Accuracy(halfWidth.typed(), Given.PURE);
        }
        if (unit.isEmpty()) {
            throw refused("the accuracy needs a unit or per cent of the reading; write for example ±" + halfWidth.typed() + " "
                + reading.unit() + " or ±" + halfWidth.typed() + " %");
        }
        if (!unit.equals(Accuracy.PER_CENT) && table.find(unit).isEmpty()) {
            throw refused(table.refusal(unit));
        }
        return new Accuracy(halfWidth.typed(), unit);
    }

    private Optional<Given> feetAndInches(String tidy) {
        Matcher found = FEET_AND_INCHES.matcher(tidy);
        if (!found.matches()) {
            return Optional.empty();
        }
        Optional<NumberText> inches = NumberText.whole(found.group(4));
        if (inches.isEmpty() || inches.get().value() >= INCHES_IN_A_FOOT) {
            throw refused("the inches after feet are a number below 12; write for example 5 ft 3 in");
        }
        double value = Double.parseDouble(found.group(2)) * INCHES_IN_A_FOOT + inches.get().value();
        boolean negative = found.group(1).equals("-") || found.group(1).equals("\u2212");
        String number = tidy.substring(0, found.start(5)).strip();
        return Optional.of(Given.typed(number, negative ? -value : value, found.group(5)));
    }

    private QuantityFormatException refused(String why) {
        return new QuantityFormatException(table.kindName() + ": \"" + text + "\" - " + why);
    }
}
