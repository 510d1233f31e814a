// SPDX-License-Identifier: EPL-2.0
package garboard.session.entry;

import java.util.Arrays;
import java.util.List;

/**
 * Why a text is no value of a field, to be worded in the person's language.
 *
 * @param reason what is wrong
 * @param facts what the sentence names, in the order in which the reason lists them
 */
public record Refusal(Reason reason, List<String> facts) {

    /** What can be wrong with an entry. Behind each: what the sentence names. */
    public enum Reason {
        /** Does not begin with a number. */
        NO_NUMBER,
        /** Only the beginning of a number or of an accuracy. */
        ONLY_BEGUN,
        /** A comma with two readings: the number as typed, one reading, the other. */
        TWO_READINGS,
        /** A second number: that number. */
        SECOND_NUMBER,
        /** Not a unit of this kind: the unit as typed, units that are. */
        UNIT_UNKNOWN,
        /** Not a unit of this kind, but near to one: the unit as typed, the one that may be meant. */
        UNIT_MEANT,
        /** A fraction alone where people measure in decimals: the fraction, the field's unit. */
        FRACTION_WITHOUT_UNIT,
        /** An accuracy without a unit: its number, the unit of the reading. */
        ACCURACY_WITHOUT_UNIT,
        /** An accuracy with a sign of its own. */
        ACCURACY_WITH_SIGN,
        /** Twelve inches or more behind feet, or no number. */
        INCHES_BEHIND_FEET,
        /** Longer than any entry. */
        TOO_LONG,
        /** No whole number. */
        NOT_WHOLE,
        /** A count below nothing. */
        BELOW_NOTHING,
        /** No date. */
        NO_DATE,
        /** A day that the month does not have: the last day it has. */
        NO_SUCH_DAY,
        /** Day and month may be exchanged: the one date, the other. */
        DATE_WITH_TWO_READINGS,
        /** A year out of all reason: the year. */
        YEAR,
        /** No time of day. */
        NO_TIME,
        /** None of the choices: the choices. */
        NO_CHOICE,
        /** Told by a sentence of the library that reads quantities: that sentence. */
        OTHER
    }

    public Refusal {
        facts = List.copyOf(facts);
    }

    static Refusal because(Reason reason, String... facts) {
        return new Refusal(reason, Arrays.asList(facts));
    }
}
