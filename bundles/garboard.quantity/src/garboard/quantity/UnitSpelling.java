// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The many ways to write one symbol: Unicode signs, spaces, raised figures, and slips of the finger. */
final class UnitSpelling {

    private static final int SHORTEST_WORTH_A_GUESS = 2;

    private UnitSpelling() {
    }

    /**
     * {@return the typed symbol in plain ASCII} µ becomes u, ° deg, ² 2, ³ 3, Ω ohm; spaces, carets, multiplication dots and full
     * stops inside or behind go. A text that is plain already comes back unchanged.
     */
    static String plain(String typed) {
        StringBuilder plain = new StringBuilder(typed.length());
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            switch (c) {
                case '\u00b5', '\u03bc' -> plain.append('u');
                case '\u00b0', '\u00ba' -> plain.append("deg");
                case '\u2103' -> plain.append("degC");
                case '\u2109' -> plain.append("degF");
                case '\u00b2', '\u2082' -> plain.append('2');
                case '\u00b3' -> plain.append('3');
                case '\u03a9', '\u2126' -> plain.append("ohm");
                case '\u2032', '\u2019' -> plain.append('\'');
                case '\u2033', '\u201d' -> plain.append('"');
                case ' ', '^', '\u00b7', '\u22c5', '*', '\u00a0' -> {
                    // no part of the symbol
                }
                case '.' -> {
                    if (plain.isEmpty()) {
                        plain.append(c);
                    }
                }
                default -> plain.append(c);
            }
        }
        return plain.toString();
    }

    /** {@return the plain symbol in small letters, but for an M at its head, which is mega and not milli} */
    static String caseless(String plain) {
        String small = plain.toLowerCase(Locale.ROOT);
        return plain.startsWith("M") ? "M" + small.substring(1) : small;
    }

    /** {@return the one unit of the same letters, or else a single slip away; nothing when there is none or more than one} */
    static Optional<AcceptedUnit> nearest(String plain, List<AcceptedUnit> units) {
        if (plain.length() < SHORTEST_WORTH_A_GUESS) {
            return Optional.empty();
        }
        return only(units, unit -> anySpelling(unit, spelling -> spelling.equalsIgnoreCase(plain)))
            .or(() -> only(units, unit -> anySpelling(unit, spelling -> oneSlip(plain, spelling))));
    }

    /** {@return the words joined as in "mm, in or ft"} */
    static String orList(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    private static Optional<AcceptedUnit> only(List<AcceptedUnit> units, Predicate<AcceptedUnit> wanted) {
        List<AcceptedUnit> found = units.stream().filter(wanted).limit(2).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static boolean anySpelling(AcceptedUnit unit, Predicate<String> wanted) {
        return Stream.concat(Stream.of(unit.symbol()), unit.spellings().stream()).map(UnitSpelling::plain).anyMatch(wanted);
    }

    /** One letter too many, missing or wrong, or two neighbours exchanged; only for symbols of three letters and more. */
    private static boolean oneSlip(String typed, String symbol) {
        String a = typed.toLowerCase(Locale.ROOT);
        String b = symbol.toLowerCase(Locale.ROOT);
        if (a.equals(b) || b.length() <= SHORTEST_WORTH_A_GUESS || Math.abs(a.length() - b.length()) > 1) {
            return false;
        }
        int head = 0;
        int shorter = Math.min(a.length(), b.length());
        while (head < shorter && a.charAt(head) == b.charAt(head)) {
            head++;
        }
        String restA = a.substring(head);
        String restB = b.substring(head);
        if (a.length() != b.length()) {
            return a.length() > b.length() ? restA.substring(1).equals(restB) : restB.substring(1).equals(restA);
        }
        boolean wrong = restA.substring(1).equals(restB.substring(1));
        boolean exchanged = restA.length() > 1 && restA.charAt(0) == restB.charAt(1) && restA.charAt(1) == restB.charAt(0)
            && restA.substring(2).equals(restB.substring(2));
        return wrong || exchanged;
    }
}
