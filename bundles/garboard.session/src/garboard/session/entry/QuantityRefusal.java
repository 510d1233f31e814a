// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import static garboard.session.entry.Refusal.because;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import garboard.quantity.Kind;
import garboard.session.entry.Refusal.Reason;

/** Tells from the sentence of the quantities' library what is wrong, so that it can be said in another language. */
final class QuantityRefusal {

    private static final Pattern MEANT = Pattern.compile("(?s).* - (.*) is not a unit of .*; did you mean (.+)\\?");
    private static final Pattern UNKNOWN = Pattern.compile("(?s).* - (.*) is not a unit of .*; use .*");
    private static final Pattern TWO_READINGS = Pattern.compile("(?s).* - the comma in (\\S+) may be read in two ways; write (\\S+) or (\\S+)");
    private static final Pattern SECOND = Pattern.compile("(?s).* - there is a second number, (.*); write thousands without a gap");
    private static final Pattern ACCURACY_UNIT = Pattern.compile("(?s).* - the accuracy needs a unit .*±(\\S+) (.+) or ±.*");
    private static final int NAMED = 6;

    private QuantityRefusal() {
    }

    static Refusal of(String sentence, Kind<?> kind) {
        Matcher meant = MEANT.matcher(sentence);
        if (meant.matches()) {
            return because(Reason.UNIT_MEANT, meant.group(1), meant.group(2));
        }
        Matcher unknown = UNKNOWN.matcher(sentence);
        if (unknown.matches()) {
            return because(Reason.UNIT_UNKNOWN, unknown.group(1), String.join(", ", kind.units().stream().limit(NAMED).toList()));
        }
        Matcher two = TWO_READINGS.matcher(sentence);
        if (two.matches()) {
            return because(Reason.TWO_READINGS, two.group(1), two.group(2), two.group(3));
        }
        Matcher second = SECOND.matcher(sentence);
        if (second.matches()) {
            return because(Reason.SECOND_NUMBER, second.group(1));
        }
        Matcher accuracy = ACCURACY_UNIT.matcher(sentence);
        if (accuracy.matches()) {
            return because(Reason.ACCURACY_WITHOUT_UNIT, accuracy.group(1), accuracy.group(2));
        }
        if (sentence.contains(" - it does not begin with a number")) {
            return because(Reason.NO_NUMBER);
        }
        if (sentence.contains(" - an accuracy is a half width")) {
            return because(Reason.ACCURACY_WITH_SIGN);
        }
        return sentence.contains(" - the inches after feet") ? because(Reason.INCHES_BEHIND_FEET) : because(Reason.OTHER, sentence);
    }
}
