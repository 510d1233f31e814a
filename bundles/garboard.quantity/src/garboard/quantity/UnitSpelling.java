// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

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

    /** {@return whether a text that matches in letters alone does not turn milli into mega or back} */
    static boolean samePrefix(String plain, AcceptedUnit unit) {
        char first = plain.charAt(0);
        return first != 'm' && first != 'M' || unit.symbol().charAt(0) == first
            || unit.spellings().stream().anyMatch(spelling -> spelling.charAt(0) == first && spelling.equalsIgnoreCase(plain));
    }

    /** {@return the one unit a single slip away from the text, nothing when there is none or more than one} */
    static Optional<AcceptedUnit> nearest(String plain, List<AcceptedUnit> units) {
        if (plain.length() < SHORTEST_WORTH_A_GUESS) {
            return Optional.empty();
        }
        List<AcceptedUnit> near = units.stream().filter(unit -> isNear(plain, unit)).limit(2).toList();
        return near.size() == 1 ? Optional.of(near.get(0)) : Optional.empty();
    }

    /** {@return the words joined as in "mm, in or ft"} */
    static String orList(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    private static boolean isNear(String plain, AcceptedUnit unit) {
        return oneSlip(plain, unit.symbol()) || unit.spellings().stream().anyMatch(spelling -> oneSlip(plain, spelling));
    }

    /** One letter too many, missing or wrong, or two neighbours exchanged; only for symbols of three letters and more. */
    private static boolean oneSlip(String typed, String symbol) {
        String a = typed.toLowerCase(Locale.ROOT);
        String b = plain(symbol).toLowerCase(Locale.ROOT);
        if (a.equals(b)) {
            return true;
        }
        if (b.length() <= SHORTEST_WORTH_A_GUESS || Math.abs(a.length() - b.length()) > 1) {
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
