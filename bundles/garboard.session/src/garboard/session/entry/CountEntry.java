// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import static garboard.session.entry.Refusal.because;

import java.util.Optional;
import java.util.regex.Pattern;

import garboard.session.entry.Refusal.Reason;

/** Reads a count: whole numbers from nothing up, as all those of the model are. */
final class CountEntry {

    private static final Pattern WHOLE = Pattern.compile("[-+\u2212]?\\d{1,9}");

    private CountEntry() {
    }

    static Reading read(String text) {
        String tidy = text.strip();
        if (!WHOLE.matcher(tidy).matches()) {
            return new Reading.Refused(because(Reason.NOT_WHOLE));
        }
        int number = Integer.parseInt(tidy.replace('\u2212', '-'));
        return number < 0 ? new Reading.Refused(because(Reason.BELOW_NOTHING)) : new Reading.Entered(number, Optional.empty());
    }
}
