// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import garboard.checks.Standing;

/** What a line, an area or a letter of a drawing is for. Which colour that is, a set of inks says. */
public enum Ink {
    /** Names and outlines. */
    INK,
    /** What may be overlooked: heights, leaders. */
    FAINT,
    /** What stands behind: the hull, hair lines. */
    PALE,
    WATER,
    /** The body of the water. */
    SEA,
    FUEL,
    EXHAUST,
    /** A fourth curve among others. */
    EMBER,
    /** The inside of hollow marks. */
    BLANK,
    /** What a person has chosen; never on paper. */
    CHOSEN,
    CHECK_BROKE, FALLS_SHORT, BORDERLINE, CANNOT_TELL, ACCEPTED,
    /** Meets, or nothing to say. */
    MEETS;

    static Ink of(Standing standing) {
        return switch (standing) {
            case CHECK_BROKE -> CHECK_BROKE;
            case FALLS_SHORT -> FALLS_SHORT;
            case BORDERLINE -> BORDERLINE;
            case CANNOT_TELL -> CANNOT_TELL;
            case ACCEPTED -> ACCEPTED;
            case MEETS, DOES_NOT_APPLY -> MEETS;
        };
    }
}
